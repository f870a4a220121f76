import Fraction from 'fraction.js'
import { expect, it } from 'vitest'
import { beatRateFollowsTrain as proof } from '../../../core/proofs/beat-rate-follows-train.ts'
import type { CaliberValues } from '../../../core/record/caliber.ts'
import { caliberOf } from '../../support/caliber-of.ts'
import { everyNeedIsNamed } from '../../support/every-need-is-named.ts'

const watch: CaliberValues = {
  beatRateVph: 18000,
  centreWheel: 80,
  thirdPinion: 10,
  thirdWheel: 75,
  fourthPinion: 10,
  fourthWheel: 80,
  escapePinion: 8,
  escapeTeeth: 15,
}
const judge = (values: CaliberValues) => proof.judge(caliberOf({ ...watch, ...values }))

it('agrees with its working written out', () => {
  const judgement = judge({})
  expect(judgement).toMatchObject({ outcome: 'agrees', found: 18000, difference: 0 })
  expect(judgement).toHaveProperty('working.0.formula', '80/10 × 75/10 × 80/8 × 2 × 15')
  expect(judgement).toHaveProperty('working.0.gives', 18000)
})

it('shows below it the turns an hour of every arbor', () => {
  expect(judge({ barrelTeeth: 80, centrePinion: 10 })).toMatchObject({
    working: [{}, { gives: 0.125 }, { gives: 1 }, { gives: 8 }, { gives: 60 }, { gives: 600, unit: 'turns an hour' }],
  })
})

it('disagrees over one wrong third wheel, with the seconds a day', () => {
  const judgement = judge({ thirdWheel: 74 })
  expect(judgement).toMatchObject({ outcome: 'disagrees', found: 17760, difference: -240, reason: 'rate-differs' })
  expect(judgement).toHaveProperty('details.secondsPerDay', -1152)
})

it.each([
  [18000.5, 'agrees'],
  [18000.6, 'doubtful'],
  // 0.3 % of 18 054 is 54.162.
  [18054, 'doubtful'],
  [18055, 'disagrees'],
  [17946, 'disagrees'],
  [17947, 'doubtful'],
])('a stated rate of %d against 18 000 %s', (beatRateVph, outcome) => {
  expect(judge({ beatRateVph }).outcome).toBe(outcome)
})

it('meets the edge of 0.3 % exactly, where binary numbers would miss it', () => {
  // 102/10 × 118/10 × 80/10 × 2 × 15 = 28886.4, and 0.3 % of 28 800 is 86.4.
  const tenths = { centreWheel: 102, thirdWheel: 118, fourthWheel: 80, escapePinion: 10 }
  expect(judge({ ...tenths, beatRateVph: 28800 })).toMatchObject({ outcome: 'doubtful', difference: 86.4 })
  expect(judge({ ...tenths, beatRateVph: 28799 }).outcome).toBe('disagrees')
})

it('asks for the other count of a pair that is begun, and for every pair that is not', () => {
  const { fourthPinion: _, fourthWheel: __, escapePinion: ___, ...rest } = watch
  expect(proof.judge(caliberOf({ ...rest, fifthWheel: 60 }))).toEqual({
    outcome: 'cannot-check',
    missing: ['escapePinion', 'fourthPinion', 'fourthWheel', 'fifthPinion'],
  })
})

it('one tooth more or less on any wheel of up to 150 teeth is never merely doubtful', () => {
  for (const key of ['centreWheel', 'thirdWheel', 'fourthWheel'] as const) {
    const exact = judge({ [key]: 150 })
    const beatRateVph = 'found' in exact ? (exact.found ?? 0) : 0
    for (const teeth of [149, 151]) expect(judge({ beatRateVph, [key]: teeth }).outcome).toBe('disagrees')
  }
})

everyNeedIsNamed(proof, watch, [
  'beatRateVph',
  'centreWheel',
  'thirdPinion',
  'thirdWheel',
  'fourthPinion',
  'fourthWheel',
  'escapePinion',
  'escapeTeeth',
])

const fiveWheels: CaliberValues = { ...watch, fifthPinion: 10, fifthWheel: 10 }
everyNeedIsNamed(proof, fiveWheels, ['fifthPinion', 'fifthWheel'])

it('asks for the fourth pair where the train does not give the rate without it', () => {
  const { fourthPinion: _, fourthWheel: __, ...rest } = watch
  expect(proof.judge(caliberOf(rest))).toEqual({ outcome: 'cannot-check', missing: ['fourthPinion', 'fourthWheel'] })
})

it('takes the hours of a centre turn as its reading printed them', () => {
  const quantity = { value: 1.333, exact: new Fraction(4, 3), unit: 'ratio', halfStep: 0 } as const
  const caliber = caliberOf({ ...watch, hoursPerCentreTurn: 1.333, beatRateVph: 13500 })
  const readings = { hoursPerCentreTurn: [{ printed: '4/3', value: 1.333, quantity, chosen: true }] }
  const judgement = proof.judge({ ...caliber, readings })
  expect(judgement.outcome).toBe('agrees')
  expect(judgement).toHaveProperty('working.0.formula', '80/10 × 75/10 × 80/8 × 2 × 15 ÷ 1 1/3')
  expect(judgement).toHaveProperty('working.0.gives', 13500)
})
