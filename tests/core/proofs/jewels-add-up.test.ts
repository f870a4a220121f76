import { expect, it } from 'vitest'
import { jewelsAddUp as proof } from '../../../core/proofs/jewels-add-up.ts'
import { caliberOf } from '../../support/caliber-of.ts'
import { everyNeedIsNamed } from '../../support/every-need-is-named.ts'

const seven = [
  { place: 'balance', kind: 'hole', count: 2 },
  { place: 'balance', kind: 'cap', count: 2 },
  { place: 'balance', kind: 'impulse', count: 1 },
  { place: 'pallet', kind: 'pallet-stone', count: 2 },
]

it('adds the list up to the stated total exactly', () => {
  expect(proof.judge(caliberOf({ jewelsStated: 7 }, seven))).toMatchObject({
    outcome: 'agrees',
    reason: 'jewels-agree',
    working: [{ formula: '2 + 2 + 1 + 2', gives: 7 }],
  })
  expect(proof.judge(caliberOf({ jewelsStated: 8 }, seven))).toMatchObject({ reason: 'jewels-short', difference: -1 })
  expect(proof.judge(caliberOf({ jewelsStated: 6 }, seven))).toMatchObject({
    outcome: 'disagrees',
    reason: 'jewels-over',
  })
})

it('cannot be checked without a list of jewels', () => {
  expect(proof.judge(caliberOf({ jewelsStated: 7 }))).toEqual({ outcome: 'cannot-check', missing: ['jewels'] })
})

everyNeedIsNamed(proof, { jewelsStated: 7 }, ['jewelsStated'], seven)
