import { expect, test } from 'vitest'
import { OutsideRange } from '../../../core/formulas/outside-range.ts'
import { wornOutSideShake } from '../../../core/formulas/worn-out-side-shake.ts'

test('a common clock is bushed at half the pivot', () => {
  expect(wornOutSideShake(0.8)).toBe(0.4)
})

test('a pivot of nothing is refused by name', () => {
  expect(() => wornOutSideShake(0)).toThrow(OutsideRange)
  expect(() => wornOutSideShake(0)).toThrow(expect.objectContaining({ details: { field: 'pivotMm', value: 0 } }))
})
