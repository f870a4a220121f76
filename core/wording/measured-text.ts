import type { Limits } from '../bench/against-limits.ts'
import type { Measured } from '../quantities/measured.ts'
import { plain } from '../quantities/plain.ts'
import { figure } from './figure.ts'

const decimals = 4

/**
 * A measured figure with what it may be off: one figure each way where both sides are alike, else both limits.
 * @example
 * measuredText({ value: 0.04, low: 0.035, high: 0.045 }, 'mm') // '0.04 ± 0.005 mm'
 */
export const measuredText = ({ value, low, high }: Measured, unit: 'mm' | '°'): string => {
  const tail = unit === '°' ? '°' : ' mm'
  const below = plain(value - low)
  const above = plain(high - value)
  if (below === above)
    return below === 0
      ? `${figure(value, decimals)}${tail}`
      : `${figure(value, decimals)} ± ${figure(above, decimals)}${tail}`
  return `${figure(value, decimals)}${tail} (${figure(low, decimals)} to ${figure(high, decimals)})`
}

/**
 * Limits as a range, as one figure, or as a least figure where there is no greatest.
 * @example
 * limitsText({ low: 0.0075, high: 0.0125 }, 'mm') // '0.0075 to 0.0125 mm'
 */
export const limitsText = ({ low, high }: Limits, unit: 'mm' | '°'): string => {
  const tail = unit === '°' ? '°' : ' mm'
  if (!Number.isFinite(high)) return `at least ${figure(low, decimals)}${tail}`
  return `${figure(low, decimals)} to ${figure(high, decimals)}${tail}`
}

/**
 * What a gauge strip shows, for those who do not see it.
 * @example
 * gaugeStripText({ low: 0.03, high: 0.05 }, { value: 0.04, low: 0.035, high: 0.045 }, 'mm') // 'From 0.03 to 0.05 mm; measured 0.04 ± 0.005 mm.'
 */
export const gaugeStripText = (limits: Limits | null, reading: Measured | null, unit: 'mm' | '°'): string => {
  const range = limits === null ? '' : limitsText(limits, unit)
  const from = range === '' ? 'No limits' : range.startsWith('at') ? `A${range.slice(1)}` : `From ${range}`
  return `${from}; ${reading === null ? 'nothing measured' : `measured ${measuredText(reading, unit)}`}.`
}
