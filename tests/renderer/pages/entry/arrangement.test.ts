import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  type ArrangeAction,
  type Arrangement,
  arrange,
  bookOrder,
  knownColumns,
  openArrangement,
  rowsOf,
} from '../../../../renderer/pages/entry/arrangement.ts'

const run = (actions: readonly ArrangeAction[], from = openArrangement()): Arrangement => actions.reduce(arrange, from)
const letters = (word: string): ArrangeAction[] => Array.from(word, (letter) => ({ type: 'letter', letter }))
const pick = { type: 'pick' } as const

test('a heading in any of the four languages goes to its field, and the next word begins anew', () => {
  const { picked } = run([...letters('hauteur'), pick, ...letters('Durchmesser'), pick, ...letters('aufzug'), pick])
  expect(picked).toEqual(['heightMm', 'diameterMm', 'winding'])
})

test('a letter with which nothing goes on begins a new word', () => {
  expect(run(letters('diamx')).at).toBe('diameterMm')
  expect(run(letters('shapewinding')).at).toBe('winding')
})

test('a picked field is moved among the picked, and left out again', () => {
  const three = openArrangement(['heightMm', 'diameterMm', 'winding'])
  const up = run(
    [
      { type: 'go-to', key: 'winding' },
      { type: 'move', by: -1 },
    ],
    three,
  )
  expect(up.picked).toEqual(['heightMm', 'winding', 'diameterMm'])
  expect(
    run(
      [
        { type: 'move', by: -1 },
        { type: 'move', by: -1 },
      ],
      up,
    ).picked,
  ).toEqual(['winding', 'heightMm', 'diameterMm'])
  expect(run([pick], up).picked).toEqual(['heightMm', 'diameterMm'])
  expect(run([{ type: 'clear' }], up).picked).toEqual([])
})

test('picking goes on to the next, so that fields in the order of the form are picked by the space bar alone', () => {
  expect(run([pick, pick, pick]).picked).toEqual(['maker', 'designation', 'alsoKnownAs'])
})

test('the form asks for the names first where the book leaves them out', () => {
  expect(bookOrder(['heightMm', 'xNew', 'heightMm', 'jewels'])).toEqual(['maker', 'designation', 'heightMm', 'jewels'])
  expect(bookOrder(['designation', 'heightMm', 'maker'])).toEqual(['designation', 'heightMm', 'maker'])
  expect(bookOrder(['xNew'])).toEqual([])
  expect(bookOrder()).toEqual([])
})

test('whatever is pressed, every field stands in the list once and one stands on one of them', () => {
  const action: fc.Arbitrary<ArrangeAction> = fc.oneof(
    fc.constant(pick),
    fc.constantFrom(1 as const, -1 as const).map((by) => ({ type: 'go' as const, by })),
    fc.constantFrom(1 as const, -1 as const).map((by) => ({ type: 'move' as const, by })),
    fc.stringMatching(/^[a-zà-ÿ0-9]$/).map((letter) => ({ type: 'letter' as const, letter })),
  )
  const all = [...rowsOf([])].sort()
  fc.assert(
    fc.property(fc.array(action, { maxLength: 60 }), (actions) => {
      const { picked, at } = run(actions)
      expect([...rowsOf(picked)].sort()).toEqual(all)
      expect(knownColumns(picked)).toEqual(picked)
      expect(all).toContain(at)
    }),
  )
})
