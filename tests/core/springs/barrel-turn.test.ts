import Fraction from 'fraction.js'
import { expect, it } from 'vitest'
import { barrelTurnHours } from '../../../core/springs/barrel-turn.ts'

it('is null while a count between barrel and centre is missing', () => {
  expect(barrelTurnHours({ barrelTeeth: 80 })).toBeNull()
  expect(barrelTurnHours({ barrelTeeth: 80, centrePinion: 10, intermediatePinion: 10 })).toBeNull()
  expect(barrelTurnHours({ barrelTeeth: 80, centrePinion: 10, intermediatePinion: 10, intermediateWheel: 40 })).toBe(32)
})

it('counts the hours of a centre turn, exactly where they are known so', () => {
  const train = { barrelTeeth: 60, centrePinion: 10, hoursPerCentreTurn: 1.333 }
  expect(barrelTurnHours(train)).toBeCloseTo(7.998)
  expect(barrelTurnHours(train, new Fraction(4, 3))).toBe(8)
})
