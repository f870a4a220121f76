/**
 * How far a spring may lie from the one specified. All of these are our choice; the grounds stand beside them.
 */
export const springLimits = {
  /** Half of the step of 0.05 mm in which heights are stocked (common practice). */
  sameHeightMm: 0.025,
  /** Half of the step of 0.005 mm in which thicknesses are stocked (common practice). */
  sameThicknessMm: 0.0025,
  /** Two in a hundred of the length cost less than one in a thousand of the turns near the best length. */
  sameLengthShare: 0.02,
  /** As the proof of the height: less play than this is for a recessed lid alone. */
  closeMm: 0.03,
  /** A strip more than a tenth of a millimetre lower lets its coils slip over one another, and gives away torque. */
  lowerMm: 0.1,
  /** Least torque at full wind, against the spring specified: one step of 0.005 mm at the usual thicknesses. */
  leastTorque: 0.85,
  /** Most torque at full wind. A movement is designed for one strength. */
  mostTorque: 1.05,
  /** The stated hours may be missed by no more than two in a hundred. */
  hoursShort: 0.02,
} as const
