import { expect, test } from 'vitest'
import { measured } from '../../../core/quantities/measured.ts'
import { readQuantity } from '../../../core/quantities/read-quantity.ts'

const typed = (text: string, instrument?: number) => {
  const read = readQuantity('length', text)
  if (!read.ok) throw new Error(`“${text}” was not read`)
  return measured(read.quantity, instrument)
}

test.each([
  ['0.04', { value: 0.04, low: 0.035, high: 0.045 }],
  ['0,040', { value: 0.04, low: 0.0395, high: 0.0405 }],
  ['4/100', { value: 0.04, low: 0.035, high: 0.045 }],
  ['18/1000', { value: 0.018, low: 0.0175, high: 0.0185 }],
  ['40 µm', { value: 0.04, low: 0.0395, high: 0.0405 }],
  ['0.04 ±0.002', { value: 0.04, low: 0.038, high: 0.042 }],
  ['0.03…0.05', { value: 0.04, low: 0.03, high: 0.05 }],
])('%s lies between half a step or the limits typed', (text, expected) => {
  expect(typed(text)).toEqual(expected)
})

test('the instrument counts where it is coarser than the last digit, and never widens limits that were typed', () => {
  expect(typed('0.040', 0.002)).toEqual({ value: 0.04, low: 0.038, high: 0.042 })
  expect(typed('0.04', 0.002)).toEqual({ value: 0.04, low: 0.035, high: 0.045 })
  expect(typed('0.04 ±0.001', 0.002)).toEqual({ value: 0.04, low: 0.039, high: 0.041 })
})

test('nothing is less than no play', () => {
  expect(typed('0.00')).toEqual({ value: 0, low: 0, high: 0.005 })
})

test('one limit alone is no measurement', () => {
  expect(typed('max 0.05')).toBeNull()
  expect(typed('min 0.02')).toBeNull()
})
