import { positive } from './positive.ts'

/**
 * Thicknesses of the spring in the diameter of the hub that it winds on: how sharply the inner coil is bent.
 *
 * q = d / e.
 * Units: mm in; a pure number out.
 * @validity Flat springs on a round hub; the hub, not the pivot of the arbor.
 * @source Definition; the factor is treated in C.-A. Reymondin et al., The Theory of Horology (from memory, not checked).
 * @throws OutsideRange where a size is not above zero.
 * @example
 * arborToThickness(4, 0.125) // 32
 */
export const arborToThickness = (barrelArborMm: number, springThicknessMm: number): number =>
  positive('barrelArborMm', barrelArborMm) / positive('springThicknessMm', springThicknessMm)

/**
 * Strain at the surface of a straight strip that is bent round a hub.
 *
 * ε = e / (d + e).
 * Units: mm in; a pure number out (0.03 is 3 %).
 * @validity A strip that was straight when free. The inner coil of a spring is formed round, so that it bears what would
 * be far beyond the elastic limit of about 1 %; the figure compares springs, it does not foretell a break.
 * @source Bending of a strip about its middle; derived here.
 * @throws OutsideRange where a size is not above zero.
 * @example
 * surfaceStrain(3.2, 0.1) // 0.0303
 */
export const surfaceStrain = (barrelArborMm: number, springThicknessMm: number): number =>
  positive('springThicknessMm', springThicknessMm) / (positive('barrelArborMm', barrelArborMm) + springThicknessMm)
