import { positive } from './positive.ts'

/**
 * Distance between the centres of a wheel and the pinion that it drives.
 *
 * a = m (Z + z) / 2: half the two pitch diameters together.
 * Units: mm (or any length) in and out; teeth and leaves counts.
 * @validity Outside gearing at its proper depth, both of one module.
 * @source W. L. Goodrich, The Modern Clock, 1905, pp. 201–202; C. Dietzschold, Die Turmuhren (year from memory, 1894), p. 245.
 * @throws OutsideRange where the module or a count is not above zero.
 * @example
 * centreDistance(0.12, 75, 10) // 5.1
 */
export const centreDistance = (moduleMm: number, driverTeeth: number, drivenTeeth: number): number =>
  (positive('moduleMm', moduleMm) * (positive('teeth', driverTeeth) + positive('teeth', drivenTeeth))) / 2
