import Fraction from 'fraction.js'
import { expect, it } from 'vitest'
import { hoursPerBarrelTurn } from '../../../core/formulas/hours-per-barrel-turn.ts'

it('goes through the intermediate pair of a long-going train', () => {
  const train = { barrelTeeth: 96, intermediate: { pinion: 8, wheel: 88 }, centrePinion: 8 }
  expect(hoursPerBarrelTurn(train).toFraction()).toBe('132')
})

it('takes the hours that the centre arbor needs for a turn', () => {
  const train = { barrelTeeth: 70, centrePinion: 12, hoursPerCentreTurn: new Fraction(4, 3) }
  expect(hoursPerBarrelTurn(train).toFraction()).toBe('70/9')
})
