import { expect, it } from 'vitest'
import { goingHours } from '../../../core/formulas/going-hours.ts'

it('multiplies turns by hours a turn', () => {
  expect(goingHours(5.5, 7.25)).toBe(39.875)
})
