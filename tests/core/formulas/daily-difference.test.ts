import { expect, it } from 'vitest'
import { dailyDifference } from '../../../core/formulas/daily-difference.ts'

it('makes ten vibrations in 18 000 48 seconds a day, with the sign of the faster rate', () => {
  expect(dailyDifference(18010, 18000)).toBeCloseTo(48)
  expect(dailyDifference(17990, 18000)).toBeCloseTo(-48)
})
