import { expect, test } from 'vitest'
import { blankEntry } from '../../../../core/record/entry.ts'
import {
  type EntryAction,
  type EntryState,
  entryReducer,
  openEntry,
} from '../../../../renderer/pages/entry/entry-state.ts'

const key = 'thirdWheel'
const run = (actions: readonly EntryAction[], from: EntryState): EntryState => actions.reduce(entryReducer, from)
const three = openEntry({
  ...blankEntry(),
  fields: {
    [key]: [
      { printed: '75', source: 'hb1', page: '44', chosen: false },
      { printed: '57', source: 'hb2', chosen: true },
      { printed: '74', chosen: false },
    ],
  },
})
const said = ({ entry }: EntryState) =>
  (entry.fields[key] ?? []).map(({ printed, chosen }) => (chosen ? `${printed}!` : printed))

test('why a reading is chosen is noted as one step, and goes with its last letter', () => {
  const noted = run(
    ['c', 'counted'].map((note) => ({ type: 'note-reading', key, index: 1, note }) as const),
    three,
  )
  expect(noted.entry.fields[key]?.[1]).toEqual({ printed: '57', source: 'hb2', chosen: true, note: 'counted' })
  expect(noted.past).toHaveLength(1)
  const gone = run([{ type: 'note-reading', key, index: 1, note: '' }], noted)
  expect(gone.entry).toEqual(three.entry)
  const back = run([{ type: 'undo' }], noted)
  expect(back.entry).toEqual(three.entry)
  expect(back.cameTo).toBe('thirdWheel.note')
})

test('what is typed in the field after its note is a step of its own', () => {
  const typed = run(
    [
      { type: 'note-reading', key, index: 1, note: 'counted' },
      { type: 'type-value', key, printed: '75' },
    ],
    three,
  )
  expect(typed.past).toHaveLength(2)
})

test.each([
  [0, ['57!', '74']],
  [1, ['75!', '74']],
  [2, ['75', '57!']],
])('reading %i goes, and one is left chosen', (index, left) => {
  const removed = run([{ type: 'remove-reading', key, index }], three)
  expect(said(removed)).toEqual(left)
  expect(run([{ type: 'undo' }], removed).entry).toEqual(three.entry)
})

test('the first of the readings gone while chosen, the next is chosen', () => {
  const first = run([{ type: 'choose-reading', key, index: 0 }], three)
  expect(said(run([{ type: 'remove-reading', key, index: 0 }], first))).toEqual(['57!', '74'])
})

test('a reading that is not there is not removed', () => {
  expect(run([{ type: 'remove-reading', key, index: 3 }], three)).toBe(three)
})
