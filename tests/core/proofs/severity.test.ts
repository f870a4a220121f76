import { expect, it } from 'vitest'
import { type Overrule, overrulesSchema, severityOf, weigh } from '../../../core/proofs/severity.ts'

const accepted: Overrule = {
  proof: 'jewels-add-up',
  severity: 'accepted',
  reason: 'Two caps were added when it was overhauled.',
  of: 'disagrees',
}

it('follows from the outcome where nobody overruled it', () => {
  const outcomes = ['disagrees', 'doubtful', 'outside-range', 'agrees', 'cannot-check'] as const
  expect(outcomes.map(severityOf)).toEqual(['wrong', 'doubtful', 'doubtful', 'none', 'none'])
  expect(weigh('jewels-add-up', 'disagrees')).toEqual({ severity: 'wrong', overruled: null })
})

it('is what the overrule says while the finding is the one it was given for', () => {
  const { reason } = accepted
  expect(weigh('jewels-add-up', 'disagrees', [accepted])).toEqual({
    severity: 'accepted',
    overruled: { severity: 'accepted', reason, applies: true },
  })
})

it('is that of the outcome again once the finding has changed', () => {
  const { reason } = accepted
  expect(weigh('jewels-add-up', 'doubtful', [accepted])).toEqual({
    severity: 'doubtful',
    overruled: { severity: 'accepted', reason, applies: false },
  })
  expect(weigh('jewels-add-up', 'agrees', [accepted]).severity).toBe('none')
})

it('is overruled for the one proof alone', () => {
  expect(weigh('beat-rate-follows-train', 'disagrees', [accepted])).toEqual({ severity: 'wrong', overruled: null })
})

it('makes more of a doubt where the owner knows it to be wrong', () => {
  expect(weigh('jewels-add-up', 'doubtful', [{ ...accepted, severity: 'wrong', of: 'doubtful' }]).severity).toBe(
    'wrong',
  )
})

it('wants a reason, and one overrule a proof, and keeps what a newer version wrote', () => {
  const later = { ...accepted, proof: 'some-later-proof', by: { hand: 'k' } }
  expect(overrulesSchema.parse([accepted, later])).toEqual([accepted, later])
  expect(overrulesSchema.safeParse([{ ...accepted, reason: ' \n' }]).success).toBe(false)
  expect(overrulesSchema.safeParse([accepted, accepted]).success).toBe(false)
})
