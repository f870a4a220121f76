import { expect, it } from 'vitest'
import { defineProof } from '../../../core/proofs/define-proof.ts'
import { caliberOf } from '../../support/caliber-of.ts'

const proof = defineProof({
  id: 'made-for-this-test',
  title: 'Made for this test',
  meaning: 'What it holds up.',
  needs: ['centreWheel'],
  uses: ['fourthWheel'],
  lists: ['jewels'],
  tolerance: { allows: 'nothing', why: 'test' },
  source: 'common practice',
  validity: 'this test',
  reasons: ['any'],
  missingBesides: (values) => (values.fourthWheel === undefined ? ['fourthWheel'] : []),
  judge: ({ centreWheel }) => ({ outcome: 'outside-range', reason: `judged ${centreWheel}` }),
})

it('names the needs, what is missing besides and the empty lists, in that order, without judging', () => {
  const missing = ['centreWheel', 'fourthWheel', 'jewels']
  expect(proof.judge(caliberOf({}))).toEqual({ outcome: 'cannot-check', missing })
})

it('judges once everything is there', () => {
  const jewels = [{ place: 'balance', kind: 'hole', count: 2 }]
  const judgement = proof.judge(caliberOf({ centreWheel: 80, fourthWheel: 70 }, jewels))
  expect(judgement).toEqual({ outcome: 'outside-range', reason: 'judged 80' })
})
