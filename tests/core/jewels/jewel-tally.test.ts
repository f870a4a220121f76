import { expect, it } from 'vitest'
import { tallyJewels } from '../../../core/jewels/jewel-tally.ts'

it('adds lines of the same seat, and puts pallet stones and impulse jewel where they belong', () => {
  expect(
    tallyJewels([
      { place: 'escape', kind: 'hole', count: 1 },
      { place: 'escape', kind: 'hole', count: 1 },
      { place: 'other', kind: 'pallet-stone', count: 2 },
      { place: 'pallet', kind: 'impulse', count: 1 },
    ]),
  ).toEqual({
    seats: { 'escape hole': 2, 'pallet pallet-stone': 2, 'balance impulse': 1 },
    places: { escape: 2, other: 2, pallet: 1 },
    total: 5,
    inPlainWork: 5,
  })
})

it('leaves the stones of other work out of the plain ones', () => {
  const beside = ['fifth', 'barrel', 'sweep', 'winding', 'other', 'a place of a newer version']
  const groups = beside.map((place) => ({ place, kind: 'hole', count: 1 }))
  expect(tallyJewels([...groups, { place: 'balance', kind: 'other', count: 1 }])).toMatchObject({
    total: beside.length + 1,
    inPlainWork: 0,
  })
})
