import { expect, test } from 'vitest'
import { makerLimits } from '../../../core/bench/maker-limits.ts'
import { readQuantity } from '../../../core/quantities/read-quantity.ts'

test.each([
  ['0.02…0.04', { low: 0.02, high: 0.04 }],
  ['0.03 ±0.01', { low: 0.02, high: 0.04 }],
  ['max 0.05', { low: 0, high: 0.05 }],
  ['min 0.02', { low: 0.02, high: Number.POSITIVE_INFINITY }],
  ['3/100', { low: 0.025, high: 0.035 }],
])('%s', (text, limits) => {
  const read = readQuantity('length', text)
  if (!read.ok) throw new Error(`“${text}” was not read`)
  expect(makerLimits(read.quantity)).toEqual(limits)
})
