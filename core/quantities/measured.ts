import { plain } from './plain.ts'
import type { Quantity } from './quantity.ts'

/** A figure measured at the bench, and the limits between which it lies for certain; all in one unit. */
export interface Measured {
  readonly value: number
  readonly low: number
  readonly high: number
}

/**
 * A figure as measured: between the limits typed with it, else as far off as half of the last digit typed or as the
 * instrument may be, whichever is more. Null where one limit alone is typed, since then nothing was measured.
 * @example
 * measured({ value: 0.04, unit: 'mm', halfStep: 0.005 }, 0.01) // { value: 0.04, low: 0.03, high: 0.05 }
 */
export const measured = (quantity: Omit<Quantity, 'exact'>, instrument = 0): Measured | null => {
  const { value, halfStep, low, high } = quantity
  if ((low === undefined) !== (high === undefined)) return null
  const off = Math.max(halfStep, instrument)
  return {
    value: plain(value),
    low: plain(Math.max(0, low ?? value - off)),
    high: plain(high ?? value + off),
  }
}
