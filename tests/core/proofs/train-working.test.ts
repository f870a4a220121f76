import { expect, it } from 'vitest'
import { stagesToCentre } from '../../../core/formulas/train-stages.ts'
import { rateOfTrain } from '../../../core/proofs/rate-of-train.ts'
import { countsWhere, fractionsOf, rateStep } from '../../../core/proofs/train-working.ts'

it('writes a chain of pairs as on paper', () => {
  expect(fractionsOf([80, 75], [10, 10])).toBe('80/10 × 75/10')
})

it('names the counts that are stated by their field', () => {
  expect(countsWhere({ barrelTeeth: 80, thirdWheel: 75 }, stagesToCentre({}))).toStrictEqual({ barrelTeeth: 80 })
})

it('puts into the working of a rate the counts that are there, and no hours where none are stated', () => {
  const values = {
    centreWheel: 64,
    thirdPinion: 8,
    thirdWheel: 60,
    escapePinion: 8,
    escapeTeeth: 30,
    beatRateVph: 3600,
  }
  const rate = rateOfTrain(values, {})
  expect(rate && rateStep(values, rate)).toStrictEqual({
    formula: '64/8 × 60/8 × 2 × 30',
    where: { centreWheel: 64, thirdPinion: 8, thirdWheel: 60, escapePinion: 8, escapeTeeth: 30 },
    gives: 3600,
  })
  expect(countsWhere({ centrePinion: 10 }, stagesToCentre({}))).toStrictEqual({ centrePinion: 10 })
})
