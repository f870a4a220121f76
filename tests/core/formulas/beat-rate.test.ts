import Fraction from 'fraction.js'
import { expect, it } from 'vitest'
import { beatRate } from '../../../core/formulas/beat-rate.ts'

it('counts two vibrations for each escape tooth', () => {
  expect(beatRate([80, 75, 80], [10, 10, 8], 15).toFraction()).toBe('18000')
})

it('divides by the hours that the first driver takes for a turn', () => {
  expect(beatRate([55, 45, 40], [5, 5, 5], 17, new Fraction(4, 3)).toFraction()).toBe('20196')
})
