import { expect, it } from 'vitest'
import { hourHandFollowsMinuteHand as proof } from '../../../core/proofs/hour-hand-follows-minute-hand.ts'
import { caliberOf } from '../../support/caliber-of.ts'
import { everyNeedIsNamed } from '../../support/every-need-is-named.ts'

const work = { cannonPinion: 12, minuteWheel: 36, minutePinion: 10, hourWheel: 40 }

it('wants 12 to 1 exactly', () => {
  expect(proof.judge(caliberOf(work))).toMatchObject({ outcome: 'agrees', found: 12 })
  const wrong = proof.judge(caliberOf({ ...work, hourWheel: 38 }))
  expect(wrong).toMatchObject({
    outcome: 'disagrees',
    found: 11.4,
    working: [{ formula: '36/12 × 38/10', gives: 11.4 }],
  })
})

it('wants 24 to 1 with a 24-hour dial', () => {
  expect(proof.judge(caliberOf({ ...work, dialHours: '24' }))).toMatchObject({ outcome: 'disagrees', stated: 24 })
  expect(proof.judge(caliberOf({ ...work, minuteWheel: 72, dialHours: '24' })).outcome).toBe('agrees')
  expect(proof.judge(caliberOf({ ...work, dialHours: '12' })).outcome).toBe('agrees')
})

everyNeedIsNamed(proof, work, ['cannonPinion', 'minuteWheel', 'minutePinion', 'hourWheel'])

it('tells how far off the ratio is, without the noise of binary sums', () => {
  expect(proof.judge(caliberOf({ ...work, hourWheel: 38 }))).toHaveProperty('difference', -0.6)
  expect(proof.judge(caliberOf(work))).toHaveProperty('difference', 0)
})
