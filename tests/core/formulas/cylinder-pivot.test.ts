import { expect, test } from 'vitest'
import { cylinderPivot, cylinderSideShake } from '../../../core/formulas/cylinder-pivot.ts'

test('the play of a cylinder’s pivot is a sixth of it', () => {
  expect(cylinderSideShake(0.12)).toBeCloseTo(0.02, 12)
})

test('the pivot is an eighth of the cylinder', () => {
  expect(cylinderPivot(0.88)).toBeCloseTo(0.11, 12)
})

test('sizes of nothing are refused by name', () => {
  expect(() => cylinderSideShake(0)).toThrow(expect.objectContaining({ details: { field: 'pivotMm', value: 0 } }))
  expect(() => cylinderPivot(-1)).toThrow(expect.objectContaining({ details: { field: 'cylinderMm', value: -1 } }))
})
