import Fraction from 'fraction.js'
import { expect, it } from 'vitest'
import { rateOfTrain, stagesOfRate } from '../../../core/proofs/rate-of-train.ts'

const train = { centreWheel: 80, thirdPinion: 10, thirdWheel: 75, fourthPinion: 10, fourthWheel: 80, escapePinion: 8 }

it('gives the exact rate with what it was worked out from', () => {
  const rate = rateOfTrain({ ...train, escapeTeeth: 15, hoursPerCentreTurn: 1.3333 }, {})
  expect(rate?.exact.toFraction()).toBe('180000000/13333')
  expect(rate).toMatchObject({ wheels: [80, 75, 80], pinions: [10, 10, 8], escapeTeeth: 15 })
})

it('gives none while a count is missing', () => {
  expect(rateOfTrain(train, {})).toBeNull()
  expect(rateOfTrain({ escapeTeeth: 15 }, {})).toBeNull()
})

it('leaves the fourth arbor out only where the train gives the stated rate so', () => {
  const clock = { centreWheel: 64, thirdPinion: 8, thirdWheel: 60, escapePinion: 8, escapeTeeth: 30 }
  expect(rateOfTrain({ ...clock, beatRateVph: 3600 }, {})?.exact.valueOf()).toBe(3600)
  expect(stagesOfRate({ ...clock, beatRateVph: 18000 })).toHaveLength(3)
})

it('is worked out anew for other readings of the same values, and for other values', () => {
  const values = { ...train, escapeTeeth: 15, hoursPerCentreTurn: 1.3333 }
  const quantity = { value: 1.3333, exact: new Fraction('1.3333'), unit: 'ratio', halfStep: 5e-5 } as const
  const readings = { hoursPerCentreTurn: [{ printed: '1.3333', value: 1.3333, quantity, chosen: true }] }
  expect(rateOfTrain(values, {})?.exact.toFraction()).toBe('180000000/13333')
  expect(rateOfTrain(values, readings)?.exact.toFraction()).toBe('13500')
  expect(rateOfTrain({ ...values, escapeTeeth: 16 }, readings)?.exact.toFraction()).toBe('14400')
})
