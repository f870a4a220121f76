import { expect, it } from 'vitest'
import { mostTurns, springCoils, springFill } from '../../../core/formulas/barrel.ts'
import { OutsideRange } from '../../../core/formulas/outside-range.ts'

const barrel = { barrelInsideMm: 12, barrelArborMm: 4, springThicknessMm: 0.12, springLengthMm: 400 }

// Vectors, properties and refused figures stand in tests/published/mainsprings.test.ts.

it('still gives the fill of a spring that does not fit, but no turns', () => {
  const long = { ...barrel, springLengthMm: 900 }
  expect(springFill(long)).toBeCloseTo(1.0743, 4)
  expect(() => springCoils(long)).toThrow(OutsideRange)
})

it('works in diameters: radii taken for diameters would give half the turns', () => {
  const halved = { barrelInsideMm: 6, barrelArborMm: 2, springThicknessMm: 0.12 }
  expect(mostTurns(halved)).toBeCloseTo(mostTurns(barrel) / 2, 9)
})
