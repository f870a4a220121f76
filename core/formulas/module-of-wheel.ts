import { positive } from './positive.ts'

/**
 * Module of a wheel or pinion: its pitch diameter shared out over its teeth.
 *
 * m = d / z.
 * Units: mm (or any length) in and out; teeth or leaves a count.
 * @validity Any toothed wheel, by its pitch diameter and not over its points. One over the module, in inches, is the diametral pitch.
 * @source W. L. Goodrich, The Modern Clock, 1905, pp. 216–217 (as diametral pitch).
 * @throws OutsideRange where diameter or count is not above zero.
 * @example
 * moduleOfWheel(10.4, 80) // 0.13
 */
export const moduleOfWheel = (pitchDiameterMm: number, teeth: number): number =>
  positive('pitchDiameterMm', pitchDiameterMm) / positive('teeth', teeth)
