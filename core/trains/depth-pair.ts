import Fraction from 'fraction.js'
import type { Depth } from '../record/caliber.ts'
import type { CountKey } from './cuttable-counts.ts'
import { depthParts } from './depth-counts.ts'

/** A line of the depths with the two counts that it speaks of. */
export interface DepthPair {
  readonly driver: CountKey
  readonly driven: CountKey
  /** Teeth of the driver to those of the driven by the sizes; null where the line gives fewer than two of them. */
  readonly ratio: Fraction | null
  readonly centreDistanceMm?: number
}

/** Two of driver pitch, driven pitch and centre distance give the third: the distance is half their sum. */
const ratioOf = ({ driverPitchMm, drivenPitchMm, centreDistanceMm }: Depth): Fraction | null => {
  const less = (pitch: number | undefined): Fraction | null =>
    pitch === undefined || centreDistanceMm === undefined ? null : new Fraction(centreDistanceMm).mul(2).sub(pitch)
  const driver = driverPitchMm === undefined ? less(drivenPitchMm) : new Fraction(driverPitchMm)
  const driven = drivenPitchMm === undefined ? less(driverPitchMm) : new Fraction(drivenPitchMm)
  return driver && driven && driver.compare(0) > 0 && driven.compare(0) > 0 ? driver.div(driven) : null
}

/**
 * The pair of counts that a line of the depths speaks of, and their ratio by the sizes; null where a name is not known.
 *
 * Driver and driven share their module, so their teeth stand as their pitch diameters.
 * @example
 * depthPair({ driver: 'third wheel', driven: 'fourth pinion', driverPitchMm: 9, centreDistanceMm: 5.1 })?.ratio?.toFraction() // '15/2'
 */
export const depthPair = (depth: Depth): DepthPair | null => {
  const { driver, driven } = depthParts(depth)
  if (driver === undefined || driven === undefined || driver === driven) return null
  const { centreDistanceMm } = depth
  return { driver, driven, ratio: ratioOf(depth), ...(centreDistanceMm !== undefined && { centreDistanceMm }) }
}
