import { expect, it } from 'vitest'
import { springCoils } from '../../../core/formulas/barrel.ts'
import { OutsideRange } from '../../../core/formulas/outside-range.ts'

it('carries a code and the figures that are outside', () => {
  const sizes = { barrelInsideMm: 9, barrelArborMm: 9.5, springThicknessMm: 0.1, springLengthMm: 300 }
  let caught: unknown
  try {
    springCoils(sizes)
  } catch (error) {
    caught = error
  }
  expect(caught).toBeInstanceOf(OutsideRange)
  expect(caught).toMatchObject({
    code: 'arbor-fills-barrel',
    details: { barrelInsideMm: 9, barrelArborMm: 9.5 },
  })
})
