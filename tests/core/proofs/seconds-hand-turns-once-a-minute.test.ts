import Fraction from 'fraction.js'
import { expect, it } from 'vitest'
import { secondsHandTurnsOnceAMinute as proof } from '../../../core/proofs/seconds-hand-turns-once-a-minute.ts'
import type { CaliberValues } from '../../../core/record/caliber.ts'
import { caliberOf } from '../../support/caliber-of.ts'
import { everyNeedIsNamed } from '../../support/every-need-is-named.ts'

const small: CaliberValues = {
  secondsDisplay: 'small',
  centreWheel: 80,
  thirdPinion: 10,
  thirdWheel: 75,
  fourthPinion: 10,
}
const indirect: CaliberValues = {
  secondsDisplay: 'centre-indirect',
  centreWheel: 80,
  thirdPinion: 10,
  sweepDriver: 75,
  sweepPinion: 10,
}
const ratio = { value: 1.3333, exact: new Fraction('1.3333'), unit: 'ratio', halfStep: 5e-5 } as const
const judge = (values: CaliberValues) => proof.judge(caliberOf(values))

it('looks at the fourth arbor for small and direct centre seconds', () => {
  expect(judge(small)).toMatchObject({ outcome: 'agrees', working: [{ formula: '80/10 × 75/10', gives: 60 }] })
  expect(judge({ ...small, secondsDisplay: 'centre-direct' }).outcome).toBe('agrees')
})

it('looks at the sweep pinion for indirect centre seconds, whatever the fourth does', () => {
  expect(judge({ ...indirect, thirdWheel: 64, fourthPinion: 8 })).toMatchObject({
    outcome: 'agrees',
    details: { arbor: 'sweep' },
  })
  expect(judge({ ...indirect, sweepDriver: 74 }).outcome).toBe('disagrees')
})

it('looks at the escape arbor of a clock without a fourth', () => {
  const clock = { centreWheel: 64, thirdPinion: 8, thirdWheel: 60, escapePinion: 8, escapeTeeth: 30, beatRateVph: 3600 }
  expect(judge({ ...clock, secondsDisplay: 'small' })).toMatchObject({
    outcome: 'agrees',
    details: { arbor: 'escape' },
  })
})

it('allows nothing: 59 31/40 turns disagree', () => {
  expect(judge({ ...small, centreWheel: 797, thirdPinion: 100 })).toMatchObject({
    outcome: 'disagrees',
    working: [{ gives: 59.775 }],
  })
  expect(judge({ ...small, centreWheel: 54, thirdPinion: 6, thirdWheel: 52, fourthPinion: 7 })).toMatchObject({
    outcome: 'disagrees',
    details: { found: '66 6/7' },
  })
})

it('counts the hours of a centre turn', () => {
  expect(judge({ ...small, hoursPerCentreTurn: 2 })).toMatchObject({ outcome: 'disagrees', found: 30 })
})

it('does not apply where there is no seconds hand', () => {
  expect(proof.appliesTo?.({ secondsDisplay: 'none' }, {})).toBe(false)
  expect(proof.appliesTo?.({}, {})).toBe(true)
})

everyNeedIsNamed(proof, small, ['secondsDisplay', 'centreWheel', 'thirdPinion', 'thirdWheel'])
everyNeedIsNamed(proof, { ...small, fourthWheel: 80 }, ['fourthPinion'])
everyNeedIsNamed(proof, indirect, ['centreWheel', 'thirdPinion', 'sweepDriver', 'sweepPinion'])

it('writes a slower centre arbor as a whole number and a fraction, as its reading printed it', () => {
  const hoursPerCentreTurn = [{ printed: '1.3333', value: 1.3333, quantity: ratio, chosen: true }]
  const slow = caliberOf({ ...small, thirdWheel: 100, hoursPerCentreTurn: 1.3333 })
  expect(proof.judge({ ...slow, readings: { hoursPerCentreTurn } })).toMatchObject({
    outcome: 'agrees',
    working: [{ formula: '80/10 × 100/10 ÷ 1 1/3', where: { hoursPerCentreTurn: 1.3333 }, gives: 60 }],
  })
})

it('names every count that is missing on the way to the hand, and none beyond it', () => {
  const missing = (values: CaliberValues) => {
    const judgement = judge(values)
    return judgement.outcome === 'cannot-check' ? judgement.missing : judgement
  }
  expect(missing({ secondsDisplay: 'small', centreWheel: 80 })).toEqual(['thirdPinion', 'thirdWheel', 'fourthPinion'])
  expect(missing({ secondsDisplay: 'centre-indirect', centreWheel: 80 })).toEqual([
    'thirdPinion',
    'sweepDriver',
    'sweepPinion',
  ])
})

it('takes nothing near to sixty for sixty', () => {
  // 61 × 59 ÷ 60 is 59 59/60: a minute lost in an hour.
  const near = { centreWheel: 61, thirdPinion: 6, thirdWheel: 59, fourthPinion: 10 }
  expect(judge({ ...small, ...near })).toMatchObject({ outcome: 'disagrees', details: { found: '59 59/60' } })
  // 60/7 turns have the sixty in the numerator alone.
  expect(judge({ ...small, thirdPinion: 70 })).toMatchObject({ outcome: 'disagrees', details: { found: '8 4/7' } })
})
