import { expect, it } from 'vitest'
import { liftAngleOfFork } from '../../../core/formulas/lift-angle-of-fork.ts'

it('multiplies the angle at the fork by the ratio of the levers', () => {
  expect(liftAngleOfFork(10, 5)).toBe(50)
})

it('refuses nothing and less', () => {
  expect(() => liftAngleOfFork(0, 3)).toThrow(expect.objectContaining({ details: { field: 'forkAngleDeg', value: 0 } }))
  expect(() => liftAngleOfFork(10, -3)).toThrow(
    expect.objectContaining({ details: { field: 'leverRatio', value: -3 } }),
  )
})
