import Fraction from 'fraction.js'
import type { CaliberFieldKey } from '../fields/caliber-fields.ts'
import { plain } from '../quantities/plain.ts'
import type { Caliber } from '../record/caliber.ts'

/** A ratio printed to four decimals or more is a fraction that no decimal holds: `1.3333` stands for 4/3. */
const manyDecimals = 0.5e-4

/**
 * A stated value as an exact fraction: as its chosen reading was printed, or else as the simplest fraction that the number stands for.
 * @example
 * exactValue({}, 'springHeightMm', 1.6).toFraction() // '8/5'
 */
export const exactValue = (readings: Caliber['readings'], key: CaliberFieldKey, value: number): Fraction => {
  const quantity = readings[key]?.find((reading) => reading.chosen)?.quantity
  if (quantity === undefined) return new Fraction(value)
  const { exact, unit, halfStep } = quantity
  return unit === 'ratio' && halfStep > 0 && halfStep <= manyDecimals ? exact.simplify(halfStep) : exact
}

/**
 * How far a stated value may lie below and above what was printed: half of the last digit, or down and up to its limits.
 * Nothing where it has no chosen reading, so that it is taken as it stands.
 * @example
 * printedSpan({}, 'springHeightMm') // { below: 0, above: 0 }
 */
export const printedSpan = (
  readings: Caliber['readings'],
  key: CaliberFieldKey,
): { readonly below: number; readonly above: number } => {
  const quantity = readings[key]?.find((reading) => reading.chosen)?.quantity
  if (quantity === undefined) return { below: 0, above: 0 }
  const { value, halfStep, low = value - halfStep, high = value + halfStep } = quantity
  return { below: plain(value - low), above: plain(high - value) }
}

const nearEdge = 1e-6

/**
 * The sign of a difference against an edge; where the two lie too close for binary numbers to tell, the fractions decide.
 * @example
 * sideOf(0.1, 0.03, () => exactValue({}, 'springHeightMm', 0.1)) // 1
 */
export const sideOf = (difference: number, edge: number, exactly: () => Fraction): number =>
  Math.abs(difference - edge) > nearEdge ? Math.sign(difference - edge) : exactly().compare(new Fraction(String(edge)))

/**
 * A fraction as a number where a decimal holds it, else as a whole number and a fraction.
 * @example
 * asWritten(exactValue({}, 'hoursPerCentreTurn', 4 / 3)) // '1 1/3'
 */
export const asWritten = (value: Fraction): number | string => {
  let rest = value.d
  while (rest % 2n === 0n) rest /= 2n
  while (rest % 5n === 0n) rest /= 5n
  return rest === 1n ? value.valueOf() : value.toFraction(true)
}
