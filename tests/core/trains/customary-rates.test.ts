import { expect, it } from 'vitest'
import { knownRate, knownRates, nearestCustomary } from '../../../core/trains/customary-rates.ts'

it('knows the eight rates of now, and older ones with their print', () => {
  expect(knownRates.filter(({ of }) => of === 'now').map(({ beatRateVph }) => beatRateVph)).toEqual([
    14400, 16200, 18000, 19800, 21600, 25200, 28800, 36000,
  ])
  for (const { of, grade } of knownRates) if (of === 'old') expect(grade).toBe('A')
  // A person is told the book and the page, not how it was looked up.
  for (const { source } of knownRates) expect(source).not.toMatch(/\([A-D]\)/)
})

it('names every rate once', () => {
  expect(new Set(knownRates.map(({ beatRateVph }) => beatRateVph)).size).toBe(knownRates.length)
})

it('knows a rate to the vibration only', () => {
  expect(knownRate(18000)?.of).toBe('now')
  expect(knownRate(17280)?.of).toBe('old')
  expect(knownRate(18001)).toBeUndefined()
})

it.each([
  [1, 14400],
  [17280, 18000],
  [17100, 18000],
  [17099, 16200],
  [32400, 36000 - 7200],
  [99999, 36000],
])('%d lies nearest to %d', (rate, nearest) => {
  expect(nearestCustomary(rate)).toBe(nearest)
})
