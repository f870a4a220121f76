import { describe, expect, it } from 'vitest'
import { jewelsAddUp } from '../../core/proofs/jewels-add-up.ts'
import type { JewelGroup } from '../../core/record/caliber.ts'
import { caliberOf } from '../support/caliber-of.ts'

/**
 * Fully jewelled 17 after the article “Jewel bearing” of an encyclopaedia (a mirror), the order of the lower totals after
 * an open textbook (Wikibooks): both B. Rows marked C are trade custom from memory.
 */
const hole = (place: JewelGroup['place'], count = 2): JewelGroup => ({ place, kind: 'hole', count })
const cap = (place: JewelGroup['place']): JewelGroup => ({ place, kind: 'cap', count: 2 })

const seven: readonly JewelGroup[] = [
  hole('balance'),
  cap('balance'),
  { place: 'balance', kind: 'impulse', count: 1 },
  { place: 'pallet', kind: 'pallet-stone', count: 2 },
]
const nine = [...seven, hole('pallet')]
const eleven = [...nine, hole('escape')]
const thirteen = [...eleven, hole('fourth')]
const fifteen = [...thirteen, hole('third')]
const seventeen = [...fifteen, hole('centre')]
const twentyOne = [...seventeen, cap('escape'), cap('pallet')]
const upperPlate = [hole('pallet', 1), hole('escape', 1), hole('fourth', 1), hole('third', 1)]

const rows: readonly (readonly [total: number, which: string, jewels: readonly JewelGroup[]])[] = [
  [7, 'balance and pallet stones; B', seven],
  [9, 'and the lever; B', nine],
  [11, 'and the escape; B', eleven],
  [11, 'upper plate only; C', [...seven, ...upperPlate]],
  [13, 'and the fourth; B', thirteen],
  [15, 'and the third; B', fifteen],
  [16, 'and one at the centre; C', [...fifteen, hole('centre', 1)]],
  [17, 'and the centre; B', seventeen],
  [18, 'and one at the barrel; C', [...seventeen, hole('barrel', 1)]],
  [18, 'and one at the sweep seconds; C', [...seventeen, hole('sweep', 1)]],
  [19, 'and caps on the escape; C', [...seventeen, cap('escape')]],
  [19, 'and two at the barrel; C', [...seventeen, hole('barrel')]],
  [21, 'and caps on escape and lever; C', twentyOne],
  [23, 'as 21 and two at the barrel; C', [...twentyOne, hole('barrel')]],
]

describe('the customary totals add up', () => {
  it.each(rows)('%i: %s', (jewelsStated, _which, jewels) => {
    const judgement = jewelsAddUp.judge(caliberOf({ jewelsStated }, jewels))
    expect(judgement).toMatchObject({ outcome: 'agrees', found: jewelsStated, difference: 0 })
  })

  it.each(rows)('%i less its first place falls short: %s', (jewelsStated, _which, jewels) => {
    const [first, ...rest] = jewels
    const judgement = jewelsAddUp.judge(caliberOf({ jewelsStated }, rest))
    expect(judgement).toMatchObject({ outcome: 'disagrees', reason: 'jewels-short', difference: -(first?.count ?? 0) })
  })

  it('a pin-pallet watch of 15 without pallet stones is made up otherwise, or does not add up (common practice; C)', () => {
    const withoutStones = fifteen.filter(({ kind }) => kind !== 'pallet-stone' && kind !== 'impulse')
    expect(jewelsAddUp.judge(caliberOf({ jewelsStated: 15 }, withoutStones))).toMatchObject({
      outcome: 'disagrees',
      difference: -3,
    })
  })
})
