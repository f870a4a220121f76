import { expect, it } from 'vitest'
import { jewelsSitInPairs } from '../../../core/proofs/jewels-sit-in-pairs.ts'
import type { CaliberValues, JewelGroup } from '../../../core/record/caliber.ts'
import { jewelsSentence } from '../../../core/wording/jewels-sentence.ts'
import { caliberOf } from '../../support/caliber-of.ts'

const said = (values: CaliberValues, jewels: readonly JewelGroup[]): string => {
  const judgement = jewelsSitInPairs.judge(caliberOf(values, jewels))
  return 'working' in judgement ? jewelsSentence(judgement, 'Do this.') : judgement.outcome
}
const jewel = (place: string, kind: string, count: number): JewelGroup => ({ place, kind, count })

it.each<[CaliberValues, JewelGroup, string]>([
  [{}, jewel('third', 'hole', 3), '3 hole jewels are listed for the third, which has 2 pivots.'],
  [
    {},
    jewel('balance', 'cap', 1),
    '1 cap jewel is listed for the balance over no hole jewel: a cap jewel stands over a hole jewel.',
  ],
  [
    { escapement: 'cylinder' },
    jewel('pallet', 'pallet-stone', 2),
    '2 pallet stones are listed, which a lever escapement has and this one has not.',
  ],
  [{ escapement: 'lever' }, jewel('pallet', 'pallet-stone', 1), '1 pallet stone is listed, where a lever has 2.'],
  [
    { escapement: 'duplex' },
    jewel('pallet', 'hole', 2),
    '2 hole jewels are listed for the pallet, and this escapement has no pallet arbor.',
  ],
  [
    { escapement: 'verge' },
    jewel('balance', 'impulse', 1),
    '1 impulse jewel is listed, and this escapement has no impulse pin.',
  ],
  [
    { escapement: 'pin-lever' },
    jewel('balance', 'impulse', 1),
    '1 impulse jewel is listed, where a pin lever usually has an impulse pin of steel.',
  ],
  [{ escapement: 'lever' }, jewel('balance', 'impulse', 2), '2 impulse jewels are listed, where a lever watch has 1.'],
  [
    { secondsDisplay: 'small' },
    jewel('sweep', 'hole', 1),
    '1 jewel is listed for the sweep, and the seconds display stated has no sweep pinion.',
  ],
  [
    { fourthWheel: 80, escapePinion: 8 },
    jewel('fifth', 'hole', 2),
    '2 jewels are listed for the fifth arbor, and the train stated has none between fourth wheel and escape pinion.',
  ],
])('%o with %o: %s', (values, group, sentence) => {
  expect(said(values, [group])).toBe(`${sentence} Do this.`)
})

it('says where a total is made up unusually', () => {
  const nine = [
    jewel('balance', 'hole', 2),
    jewel('balance', 'cap', 2),
    jewel('balance', 'impulse', 1),
    jewel('pallet', 'pallet-stone', 2),
    jewel('escape', 'hole', 2),
  ]
  expect(said({ escapement: 'lever' }, nine)).toBe(
    'For as many jewels 2 would be customary at the pallet; no hole jewels are listed. ' +
      'For as many jewels 0 would be customary at the escape; 2 hole jewels are listed. Do this.',
  )
})
