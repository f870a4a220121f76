import { expect, it } from 'vitest'
import { jewelsSitInPairs as proof } from '../../../core/proofs/jewels-sit-in-pairs.ts'
import { proveCaliber } from '../../../core/proofs/prove.ts'
import { caliberOf } from '../../support/caliber-of.ts'

const seven = [
  { place: 'balance', kind: 'hole', count: 2 },
  { place: 'balance', kind: 'cap', count: 2 },
  { place: 'balance', kind: 'impulse', count: 1 },
  { place: 'pallet', kind: 'pallet-stone', count: 2 },
]
const lever = { escapement: 'lever', jewelsStated: 7 } as const

it('agrees where every jewel has its place, and adds up by place', () => {
  expect(proof.judge(caliberOf(lever, seven))).toMatchObject({
    outcome: 'agrees',
    reason: 'jewels-paired',
    stated: 7,
    found: 7,
    working: [{ formula: '5 balance + 2 pallet', where: { balance: 5, pallet: 2 }, gives: 7 }],
  })
})

it('disagrees where a stone belongs to another escapement, whatever else is unusual', () => {
  const jewels = [...seven, { place: 'third', kind: 'hole', count: 1 }]
  expect(proof.judge(caliberOf({ escapement: 'pin-lever' }, jewels))).toMatchObject({
    outcome: 'disagrees',
    reason: 'jewels-misplaced',
    working: [
      {},
      { formula: 'third, hole: 1 − 2', where: { objection: 'odd-pivot' }, gives: -1 },
      { formula: 'pallet, pallet stone: 2 − 0', where: { objection: 'stones-without-lever' }, gives: 2 },
      { formula: 'balance, impulse: 1 − 0', where: { objection: 'impulse-in-pin-lever' }, gives: 1 },
    ],
  })
})

it('doubts what is unusual for the total, and never objects to it', () => {
  const jewels = [...seven, { place: 'centre', kind: 'hole', count: 2 }]
  expect(proof.judge(caliberOf({ ...lever, jewelsStated: 9 }, jewels))).toMatchObject({
    outcome: 'doubtful',
    reason: 'jewels-unusual',
  })
})

it.each([
  [1, 'doubtful'],
  [2, 'agrees'],
  [3, 'disagrees'],
] as const)('%i hole jewels of the escape %s: an arbor has two pivots, to the jewel', (count, outcome) => {
  const jewels = [...seven, { place: 'pallet', kind: 'hole', count: 2 }, { place: 'escape', kind: 'hole', count }]
  expect(proof.judge(caliberOf({ escapement: 'lever' }, jewels))).toMatchObject({ outcome })
})

it('cannot be checked without a list of jewels', () => {
  expect(proof.judge(caliberOf({ jewelsStated: 7 }))).toEqual({ outcome: 'cannot-check', missing: ['jewels'] })
})

it('says nothing of a movement without jewels', () => {
  const said = proveCaliber(caliberOf({ jewelsStated: 0 })).map(({ proof: { id } }) => id)
  expect(said).not.toContain('jewels-sit-in-pairs')
})

it('tells a stone on an arbor that is not there by its place alone, and counts in jewels', () => {
  const jewels = [...seven, { place: 'sweep', kind: 'hole', count: 2 }]
  expect(proof.judge(caliberOf({ escapement: 'lever', secondsDisplay: 'small' }, jewels))).toMatchObject({
    outcome: 'disagrees',
    unit: 'jewels',
    difference: null,
    allowed: null,
    working: [{}, { formula: 'sweep: 2 − 0', where: { objection: 'no-sweep-arbor' }, gives: 2 }],
  })
})
