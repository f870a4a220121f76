import fc from 'fast-check'
import { expect, test } from 'vitest'
import { againstLimits } from '../../../core/bench/against-limits.ts'

const limits = { low: 0.03, high: 0.05 }
const about = (value: number, low: number, high: number) => ({ value, low, high })

test.each([
  ['within', about(0.04, 0.035, 0.045)],
  ['within', about(0.04, 0.03, 0.05)],
  ['below', about(0.02, 0.015, 0.0299)],
  ['above', about(0.06, 0.0501, 0.065)],
  ['cannot-tell', about(0.03, 0.025, 0.035)],
  ['cannot-tell', about(0.025, 0.02, 0.03)],
  ['cannot-tell', about(0.055, 0.05, 0.06)],
  ['cannot-tell', about(0.04, 0.02, 0.06)],
] as const)('%s: %j', (verdict, reading) => {
  expect(againstLimits(reading, limits)).toBe(verdict)
})

test('an exact figure at the edge is within', () => {
  expect(againstLimits(about(0.03, 0.03, 0.03), limits)).toBe('within')
  expect(againstLimits(about(0.05, 0.05, 0.05), limits)).toBe('within')
})

test('where there is no greatest figure nothing is above', () => {
  expect(againstLimits(about(9, 8, 10), { low: 0.02, high: Number.POSITIVE_INFINITY })).toBe('within')
})

test('a finer reading never turns one side into the other', () => {
  const um = fc.integer({ min: 0, max: 100 })
  fc.assert(
    fc.property(um, um, um, (value, off, finer) => {
      const read = (width: number) =>
        againstLimits(about(value / 1000, (value - width) / 1000, (value + width) / 1000), limits)
      const coarse = read(off)
      if (coarse !== 'cannot-tell') expect(read(Math.min(off, finer))).toBe(coarse)
    }),
  )
})
