import { OutsideRange } from './outside-range.ts'

/**
 * The value, held to be above zero.
 *
 * x > 0.
 * Units: any; `field` names the value in the refusal.
 * @validity Every size, angle, time and rate in these formulas.
 * @source Definition.
 * @throws OutsideRange where the value is zero, negative or not a number.
 * @example
 * positive('liftAngleDeg', 52) // 52
 */
export const positive = (field: string, value: number): number => {
  if (!(value > 0)) throw new OutsideRange('not-positive', { field, value })
  return value
}
