import { positive } from './positive.ts'

/**
 * Distance from tooth to tooth along the pitch circle.
 *
 * t = π m.
 * Units: mm (or any length) in and out.
 * @validity Any toothed wheel, measured along the pitch circle and not straight across.
 * @source C. Dietzschold, Die Turmuhren (year from memory, 1894), pp. 236, 245.
 * @throws OutsideRange where the module is not above zero.
 * @example
 * circularPitch(1.3) // 4.0841
 */
export const circularPitch = (moduleMm: number): number => Math.PI * positive('moduleMm', moduleMm)
