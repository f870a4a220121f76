import { describe, expect, it } from 'vitest'
import { jewelsSitInPairs } from '../../core/proofs/jewels-sit-in-pairs.ts'
import type { JewelGroup } from '../../core/record/caliber.ts'
import { caliberOf } from '../support/caliber-of.ts'

/*
 * How totals are made up: research/trains.md, section 8a. Grades: B, an excerpt was read (Wikibooks, an encyclopaedia's
 * "Jewel bearing"); C, trade custom from memory.
 */
type Row = readonly [
  total: string,
  grade: 'B' | 'C',
  seats: readonly (readonly [place: string, kind: string, count: number])[],
]

const balance = [
  ['balance', 'hole', 2],
  ['balance', 'cap', 2],
  ['balance', 'impulse', 1],
  ['pallet', 'pallet-stone', 2],
] as const
const pairs = (...places: readonly string[]) => places.map((place) => [place, 'hole', 2] as const)
const full = [...balance, ...pairs('pallet', 'escape', 'fourth', 'third', 'centre')]
const capped = [...full, ['escape', 'cap', 2], ['pallet', 'cap', 2]] as const

const table: readonly Row[] = [
  ['7', 'B', balance],
  ['9', 'B', [...balance, ...pairs('pallet')]],
  ['11', 'B', [...balance, ...pairs('pallet', 'escape')]],
  ['11', 'C', [...balance, ...['pallet', 'escape', 'fourth', 'third'].map((place) => [place, 'hole', 1] as const)]],
  ['13', 'B', [...balance, ...pairs('pallet', 'escape', 'fourth')]],
  ['15', 'B', [...balance, ...pairs('pallet', 'escape', 'fourth', 'third')]],
  ['16', 'C', [...balance, ...pairs('pallet', 'escape', 'fourth', 'third'), ['centre', 'hole', 1]]],
  ['17', 'B', full],
  ['18', 'C', [...full, ['barrel', 'hole', 1]]],
  ['18', 'C', [...full, ['sweep', 'hole', 1]]],
  ['19', 'C', [...full, ['escape', 'cap', 2]]],
  ['19', 'C', [...full, ['barrel', 'hole', 2]]],
  ['21', 'C', capped],
  ['23', 'C', [...capped, ['barrel', 'hole', 2]]],
]

const watch = (total: string, seats: Row[2]) => {
  const jewels: readonly JewelGroup[] = seats.map(([place, kind, count]) => ({ place, kind, count }))
  return caliberOf({ escapement: 'lever', jewelsStated: Number(total) }, jewels)
}

describe('the customary ways to a total', () => {
  it.each(table)('%s jewels (grade %s) are found customary', (total, _grade, seats) => {
    expect(jewelsSitInPairs.judge(watch(total, seats))).toMatchObject({ outcome: 'agrees', found: Number(total) })
  })

  it('moving a pair of any of them to another place of the train is doubted and never called wrong', () => {
    for (const [total, , seats] of table) {
      const held = new Set(seats.map(([place]) => place))
      const free = ['centre', 'third', 'fourth', 'escape'].find((place) => !held.has(place))
      const from = seats.findIndex(([place, kind, count]) => place === 'pallet' && kind === 'hole' && count === 2)
      if (free === undefined || from < 0) continue
      const moved = seats.map((seat, at) => (at === from ? ([free, 'hole', 2] as const) : seat))
      expect(jewelsSitInPairs.judge(watch(total, moved))).toMatchObject({
        outcome: 'doubtful',
        reason: 'jewels-unusual',
      })
    }
  })

  it('a pin lever is not held to the table: its 15 or 17 are made up otherwise (section 8a, C)', () => {
    const jewels = [
      { place: 'balance', kind: 'hole', count: 2 },
      { place: 'balance', kind: 'cap', count: 2 },
      ...['pallet', 'escape', 'fourth', 'third', 'centre'].map((place) => ({ place, kind: 'hole', count: 2 })),
      { place: 'escape', kind: 'cap', count: 1 },
    ]
    expect(jewelsSitInPairs.judge(caliberOf({ escapement: 'pin-lever', jewelsStated: 15 }, jewels))).toMatchObject({
      outcome: 'agrees',
    })
  })
})
