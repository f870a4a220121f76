import { expect, it } from 'vitest'
import { inertiaOfRing } from '../../../core/formulas/inertia-of-ring.ts'

it('grows with the mass and with the square of the radius', () => {
  expect(inertiaOfRing(200, 5)).toBe(50)
  expect(inertiaOfRing(100, 10)).toBe(100)
})

it('refuses nothing', () => {
  expect(() => inertiaOfRing(0, 5)).toThrow(expect.objectContaining({ details: { field: 'massMg', value: 0 } }))
  expect(() => inertiaOfRing(5, 0)).toThrow(expect.objectContaining({ details: { field: 'radiusMm', value: 0 } }))
})
