import fc from 'fast-check'
import { expect, it } from 'vitest'
import { bestSpringLength, springCoils } from '../../../core/formulas/barrel.ts'
import { OutsideRange } from '../../../core/formulas/outside-range.ts'
import { thicknessForTurns } from '../../../core/formulas/thickness-for-turns.ts'

it('gives the strip that turns so often at its best length', () => {
  const size = (min: number, max: number) => fc.double({ min, max, noNaN: true })
  fc.assert(
    fc.property(size(4, 30), size(0.2, 0.45), size(3, 12), (inside, share, turns) => {
      const barrel = { barrelInsideMm: inside, barrelArborMm: inside * share }
      const thickness = thicknessForTurns(inside, inside * share, turns)
      const sizes = { ...barrel, springThicknessMm: thickness }
      expect(springCoils({ ...sizes, springLengthMm: bestSpringLength(sizes) }).turns).toBeCloseTo(turns, 9)
    }),
  )
})

it('refuses a barrel without room and turns of nothing', () => {
  expect(() => thicknessForTurns(10, 10, 7)).toThrow(OutsideRange)
  expect(() => thicknessForTurns(10, 3, 0)).toThrow(OutsideRange)
  expect(() => thicknessForTurns(-1, 3, 7)).toThrow(OutsideRange)
  expect(() => thicknessForTurns(10, 0, 7)).toThrow(OutsideRange)
})
