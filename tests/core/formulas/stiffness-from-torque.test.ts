import { expect, it } from 'vitest'
import { stiffnessFromTorque } from '../../../core/formulas/stiffness-from-torque.ts'

it('is the torque over the angle in radians', () => {
  expect(stiffnessFromTorque(Math.PI, 180)).toBeCloseTo(1)
})

it('refuses nothing', () => {
  expect(() => stiffnessFromTorque(0, 45)).toThrow(
    expect.objectContaining({ details: { field: 'torqueNm', value: 0 } }),
  )
  expect(() => stiffnessFromTorque(1, 0)).toThrow(expect.objectContaining({ details: { field: 'angleDeg', value: 0 } }))
})
