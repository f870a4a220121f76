import { expect, it } from 'vitest'
import { moduleOfWheel } from '../../../core/formulas/module-of-wheel.ts'

it('shares the pitch diameter out over the teeth', () => {
  expect(moduleOfWheel(6.3, 70)).toBeCloseTo(0.09, 12)
})

it('refuses a wheel without size or teeth', () => {
  expect(() => moduleOfWheel(0, 70)).toThrow('not-positive')
  expect(() => moduleOfWheel(6.3, 0)).toThrow('not-positive')
})
