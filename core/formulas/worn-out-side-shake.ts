import { positive } from './positive.ts'

/**
 * Side-shake at which the hole of a common clock is bushed or closed at the latest, or the pivot replaced.
 *
 * s = d(pivot) / 2.
 * Units: mm (or any length) in and out.
 * @validity Common clocks; in fine work the centre distances are restored long before, and a watch never comes near it.
 * @source W. L. Goodrich, The Modern Clock, 1905, p. 203.
 * @throws OutsideRange where the pivot is not above zero.
 * @example
 * wornOutSideShake(0.8) // 0.4
 */
export const wornOutSideShake = (pivotMm: number): number => positive('pivotMm', pivotMm) / 2
