import { plain } from '../quantities/plain.ts'
import type { Quantity } from '../quantities/quantity.ts'
import type { Limits } from './against-limits.ts'

/**
 * The limits that a maker's figure sets: those printed, one of them alone, or half of its last digit either side of a
 * single figure.
 * @example
 * makerLimits({ value: 0.05, unit: 'mm', halfStep: 0.005, high: 0.05 }) // { low: 0, high: 0.05 }
 */
export const makerLimits = ({ value, halfStep, low, high }: Omit<Quantity, 'exact'>): Limits =>
  low === undefined && high === undefined
    ? { low: plain(value - halfStep), high: plain(value + halfStep) }
    : { low: low ?? 0, high: high ?? Number.POSITIVE_INFINITY }
