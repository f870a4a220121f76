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
