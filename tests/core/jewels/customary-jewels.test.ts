import { expect, it } from 'vitest'
import { unusualSeats } from '../../../core/jewels/customary-jewels.ts'

const seven = {
  'balance hole': 2,
  'balance cap': 2,
  'balance impulse': 1,
  'pallet pallet-stone': 2,
} as const

// Every row of the table stands in tests/published/jewels.test.ts.

it('finds nothing unusual in the customary way, and says nothing of a total it does not know', () => {
  expect(unusualSeats({ seats: seven, inPlainWork: 7 })).toEqual([])
  expect(unusualSeats({ seats: { ...seven, 'escape hole': 1 }, inPlainWork: 8 })).toBeNull()
  expect(unusualSeats({ seats: { 'balance hole': 2 }, inPlainWork: 2 })).toBeNull()
})

it('names what differs from the nearer of two ways', () => {
  expect(unusualSeats({ seats: { ...seven, 'pallet hole': 2, 'third hole': 2 }, inPlainWork: 11 })).toEqual([
    { seat: 'escape hole', count: 0, customary: 2 },
    { seat: 'third hole', count: 2, customary: 0 },
  ])
  expect(
    unusualSeats({
      seats: { ...seven, 'pallet hole': 1, 'escape hole': 1, 'fourth hole': 2 },
      inPlainWork: 11,
    }),
  ).toEqual([
    { seat: 'fourth hole', count: 2, customary: 1 },
    { seat: 'third hole', count: 0, customary: 1 },
  ])
})
