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
