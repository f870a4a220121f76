import { expect, it } from 'vitest'
import { positive } from '../../../core/formulas/positive.ts'

it('gives back what is above zero', () => {
  expect(positive('liftAngleDeg', 0.001)).toBe(0.001)
})

it.each([0, -1, Number.NaN])('refuses %d and names the field', (value) => {
  expect(() => positive('liftAngleDeg', value)).toThrow(
    expect.objectContaining({ code: 'not-positive', details: { field: 'liftAngleDeg', value } }),
  )
})
