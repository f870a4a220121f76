import { expect, it } from 'vitest'
import { plain } from '../../../core/quantities/plain.ts'

it('leaves no noise of binary sums, and takes nothing from a figure that was typed', () => {
  expect(plain(1.6 - 1.5)).toBe(0.1)
  expect(plain(0.1075 - 0.105)).toBe(0.0025)
  expect(plain(0.000_000_125)).toBe(0.000_000_125)
})
