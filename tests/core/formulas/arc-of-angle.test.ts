import { expect, test } from 'vitest'
import { arcOfAngle } from '../../../core/formulas/arc-of-angle.ts'

test('a full turn is the circumference', () => {
  expect(arcOfAngle(360, 2)).toBeCloseTo(2 * Math.PI, 12)
})

test('the arc grows with angle and diameter alike', () => {
  expect(arcOfAngle(3, 7.5)).toBeCloseTo(2 * arcOfAngle(1.5, 7.5), 12)
  expect(arcOfAngle(1.5, 15)).toBeCloseTo(2 * arcOfAngle(1.5, 7.5), 12)
})

test('an angle or a diameter of nothing is refused by name', () => {
  expect(() => arcOfAngle(0, 7.5)).toThrow(expect.objectContaining({ details: { field: 'angleDeg', value: 0 } }))
  expect(() => arcOfAngle(1.5, 0)).toThrow(expect.objectContaining({ details: { field: 'diameterMm', value: 0 } }))
})
