import type { Measured } from '../quantities/measured.ts'

/** Limits within which a figure is sound; no upper one where that is infinite. */
export interface Limits {
  readonly low: number
  readonly high: number
}

export type LimitVerdict = 'within' | 'below' | 'above' | 'cannot-tell'

/**
 * Where a measured figure lies beside limits; it cannot be told where what it may be off reaches past one of them.
 * @example
 * againstLimits({ value: 0.03, low: 0.025, high: 0.035 }, { low: 0.03, high: 0.05 }) // 'cannot-tell'
 */
export const againstLimits = ({ low, high }: Measured, limits: Limits): LimitVerdict => {
  if (high < limits.low) return 'below'
  if (low > limits.high) return 'above'
  return low >= limits.low && high <= limits.high ? 'within' : 'cannot-tell'
}
