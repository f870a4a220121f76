import { expect, it } from 'vitest'
import { springCoils } from '../../../core/formulas/barrel.ts'
import { OutsideRange } from '../../../core/formulas/outside-range.ts'
import { stripFromPack } from '../../../core/formulas/strip-from-pack.ts'

it('finds the strip whose coils lie so against the wall', () => {
  const sizes = { barrelInsideMm: 12, barrelArborMm: 4, springThicknessMm: 0.12, springLengthMm: 400 }
  const { down } = springCoils(sizes)
  const { thicknessMm, lengthMm } = stripFromPack(12, down * 0.12, down)
  expect(thicknessMm).toBeCloseTo(0.12, 12)
  expect(lengthMm).toBeCloseTo(400, 9)
})

it('refuses a pack that reaches the middle, and coils of nothing', () => {
  expect(() => stripFromPack(10, 5, 10)).toThrow(OutsideRange)
  expect(() => stripFromPack(10, 2, 0)).toThrow(OutsideRange)
  expect(() => stripFromPack(10, 0, 8)).toThrow(OutsideRange)
  expect(() => stripFromPack(0, 0.5, 8)).toThrow(OutsideRange)
})
