import { expect, it } from 'vitest'
import { rateIsCustomary as proof } from '../../../core/proofs/rate-is-customary.ts'
import type { CaliberValues } from '../../../core/record/caliber.ts'
import { caliberOf } from '../../support/caliber-of.ts'
import { caliberPrinted } from '../../support/caliber-printed.ts'
import { everyNeedIsNamed } from '../../support/every-need-is-named.ts'

const train: CaliberValues = {
  centreWheel: 80,
  thirdPinion: 10,
  thirdWheel: 75,
  fourthPinion: 10,
  fourthWheel: 80,
  escapePinion: 8,
  escapeTeeth: 15,
}
const judge = (values: CaliberValues) => proof.judge(caliberOf(values))

it('agrees with a train that gives a customary rate, stated or not', () => {
  expect(judge(train)).toMatchObject({
    outcome: 'agrees',
    reason: 'rate-customary',
    stated: null,
    found: 18000,
    difference: 0,
    working: [
      { formula: '80/10 × 75/10 × 80/8 × 2 × 15', gives: 18000 },
      { formula: '18000 ÷ 3600', gives: 5, unit: 'beats a second' },
    ],
  })
})

it('looks at the stated rate where the counts give none', () => {
  expect(judge({ beatRateVph: 28800 })).toMatchObject({
    outcome: 'agrees',
    details: { of: 'stated' },
    working: [{ formula: '28800 ÷ 3600', gives: 8 }],
  })
  expect(judge({ beatRateVph: 18000, centreWheel: 80 })).toMatchObject({ details: { of: 'stated' } })
})

it('looks at the train first, since a rate that is stated may be rounded', () => {
  expect(judge({ ...train, thirdWheel: 74, beatRateVph: 18000 })).toMatchObject({
    outcome: 'doubtful',
    reason: 'rate-uncommon',
    found: 17760,
    difference: -240,
    details: { of: 'train', nearest: 18000 },
  })
})

it('never says worse than doubtful', () => {
  for (const beatRateVph of [1000, 5000, 13579, 17999, 400000]) {
    expect(judge({ beatRateVph })).toMatchObject({ outcome: 'doubtful' })
  }
})

it.each([
  ['18 000', 'agrees'],
  ['17 999', 'doubtful'],
  ['18 001', 'doubtful'],
  ['5/s', 'agrees'],
  ['2.5 Hz', 'agrees'],
  ['300/min', 'agrees'],
  ['17 280', 'agrees'],
  ['17 281', 'doubtful'],
])('%s %s: a known rate exactly, or a remark', (beatRateVph, outcome) => {
  expect(proof.judge(caliberPrinted({ beatRateVph })).outcome).toBe(outcome)
})

it.each([
  [1900, 'rate-of-old', 'agrees'],
  [1901, 'rate-outdated', 'doubtful'],
])('17 280 in a caliber of %d is %s: %s', (firstYear, reason, outcome) => {
  expect(judge({ beatRateVph: 17280, firstYear })).toMatchObject({ reason, outcome })
  expect(judge({ beatRateVph: 18000, firstYear }).outcome).toBe('agrees')
})

it('shows a rate that no decimal holds as a whole number and a fraction', () => {
  const values = { ...train, centreWheel: 64, thirdPinion: 7, hoursPerCentreTurn: 1 }
  expect(judge(values)).toMatchObject({ outcome: 'doubtful', working: [{ gives: '20571 3/7' }, {}] })
})

everyNeedIsNamed(proof, { beatRateVph: 18000 }, ['beatRateVph'])

it.each(Object.keys(train) as (keyof CaliberValues)[])('asks for the rate where the train lacks %s', (key) => {
  const { [key]: _, ...rest } = train
  expect(judge(rest)).toEqual({ outcome: 'cannot-check', missing: ['beatRateVph'] })
})

it('tells a clock by the train that Derham prints, with where it stands in print', () => {
  // W. Derham, The Artificial Clock-maker, 1696, pp. 19–30: 15 960 is among his trains (grade as in research/trains.md).
  expect(judge({ beatRateVph: 15960 })).toEqual({
    outcome: 'agrees',
    stated: null,
    found: 15960,
    unit: 'vph',
    difference: 0,
    allowed: 0,
    working: [{ formula: '15960 ÷ 3600', where: { beatRateVph: 15960 }, gives: '4 13/30', unit: 'beats a second' }],
    reason: 'rate-of-old',
    details: { of: 'stated', nearest: expect.any(Number), source: expect.stringContaining('Derham') },
  })
})

it('names no source where the rate is nobody’s', () => {
  const judgement = judge({ beatRateVph: 17999 })
  expect(judgement).toMatchObject({ difference: -1, details: { nearest: 18000 } })
  expect('details' in judgement && judgement.details).not.toHaveProperty('source')
})

it('does not take a rate that no decimal holds for the customary one in its numerator', () => {
  // 80/10 × 75/10 × 10/7 × 2 × 15 is 18000/7, that is 2571 3/7.
  expect(judge({ ...train, fourthWheel: 10, escapePinion: 7 })).toMatchObject({
    outcome: 'doubtful',
    reason: 'rate-uncommon',
    working: [{ gives: '2571 3/7' }, {}],
  })
})
