import fc from 'fast-check'
import { expect, test } from 'vitest'
import { blankEntry } from '../../../../core/record/entry.ts'
import {
  type EntryAction,
  type EntryState,
  entryReducer,
  openEntry,
} from '../../../../renderer/pages/entry/entry-state.ts'

const run = (actions: readonly EntryAction[], from: EntryState = openEntry(blankEntry())): EntryState =>
  actions.reduce(entryReducer, from)
const type = (key: 'thirdWheel' | 'beatRateVph' | 'maker', printed: string): EntryAction => ({
  type: 'type-value',
  key,
  printed,
})
const hold = (source: string, page: string): EntryAction => ({ type: 'take-in-hand', inHand: { source, page } })

test('typing in one field is one step, and is taken back and done again as one', () => {
  const typed = run([type('thirdWheel', '5'), type('thirdWheel', '57'), type('beatRateVph', '18000')])
  expect(typed.past).toHaveLength(2)
  const back = run([{ type: 'undo' }, { type: 'undo' }], typed)
  expect(back.entry).toEqual(blankEntry())
  expect(back.cameTo).toBe('thirdWheel')
  expect(run([{ type: 'redo' }, { type: 'redo' }], back).entry).toEqual(typed.entry)
})

test('coming back to a field after leaving it is a step of its own', () => {
  const typed = run([type('thirdWheel', '57'), { type: 'leave-cell' }, type('thirdWheel', '75')])
  expect(typed.past).toHaveLength(2)
  expect(run([{ type: 'undo' }], typed).entry.fields.thirdWheel).toEqual([{ printed: '57' }])
})

test('source and page ride along on values typed from then on', () => {
  const { entry } = run([type('beatRateVph', '18000'), hold('hb1', '44'), type('thirdWheel', '75')])
  expect(entry.fields).toEqual({
    beatRateVph: [{ printed: '18000' }],
    thirdWheel: [{ printed: '75', source: 'hb1', page: '44' }],
  })
})

test('a value corrected later keeps its own source', () => {
  const { entry } = run([hold('hb1', '44'), type('thirdWheel', '57'), hold('hb2', '9'), type('thirdWheel', '75')])
  expect(entry.fields.thirdWheel).toEqual([{ printed: '75', source: 'hb1', page: '44' }])
})

test('a value emptied and typed anew takes the source in hand', () => {
  const { entry } = run([
    hold('hb1', '44'),
    type('thirdWheel', '57'),
    hold('hb2', ''),
    type('thirdWheel', ''),
    type('thirdWheel', '75'),
  ])
  expect(entry.fields.thirdWheel).toEqual([{ printed: '75', source: 'hb2' }])
})

test('a second reading stands beside the first and is chosen, and the first can be chosen again', () => {
  const two = run([
    hold('hb1', '44'),
    type('thirdWheel', '75'),
    hold('hb2', '9'),
    { type: 'add-reading', key: 'thirdWheel' },
    type('thirdWheel', '74'),
  ])
  expect(two.entry.fields.thirdWheel).toEqual([
    { printed: '75', source: 'hb1', page: '44', chosen: false },
    { printed: '74', source: 'hb2', page: '9', chosen: true },
  ])
  const { entry } = run([{ type: 'choose-reading', key: 'thirdWheel', index: 0 }], two)
  expect(entry.fields.thirdWheel?.map(({ chosen }) => chosen)).toEqual([true, false])
})

test('maker and designation stand at the head of the entry and carry no source', () => {
  const { entry } = run([hold('hb1', '44'), type('maker', 'Verrin')])
  expect(entry.maker).toBe('Verrin')
  expect(entry.fields).toEqual({})
})

test('typing in the blank line at the end of a list makes it a line, and it can be removed', () => {
  const typed = run([
    { type: 'type-in-list', list: 'jewels', line: 0, column: 'place', text: 'balance' },
    { type: 'type-in-list', list: 'jewels', line: 0, column: 'count', text: '4' },
    { type: 'type-in-list', list: 'jewels', line: 1, column: 'place', text: 'pallet' },
  ])
  expect(typed.entry.jewels).toEqual([{ place: 'balance', count: '4' }, { place: 'pallet' }])
  const removed = run([{ type: 'remove-line', list: 'jewels', line: 0 }], typed)
  expect(removed.entry.jewels).toEqual([{ place: 'pallet' }])
  expect(run([{ type: 'undo' }], removed).entry).toEqual(typed.entry)
})

test('the source in hand can be given to values that have none', () => {
  const { entry } = run([type('thirdWheel', '75'), hold('hb1', '44'), { type: 'give-source', keys: ['thirdWheel'] }])
  expect(entry.fields.thirdWheel).toEqual([{ printed: '75', source: 'hb1', page: '44' }])
})

test('whatever is done can be taken back to the beginning and done again', () => {
  const action: fc.Arbitrary<EntryAction> = fc.oneof(
    fc.record({
      type: fc.constant('type-value' as const),
      key: fc.constantFrom('maker' as const, 'thirdWheel' as const, 'diameterMm' as const),
      printed: fc.string({ maxLength: 4 }),
    }),
    fc.record({
      type: fc.constant('type-in-list' as const),
      list: fc.constantFrom('jewels' as const, 'parts' as const),
      line: fc.nat(3),
      column: fc.constantFrom('place', 'part'),
      text: fc.string({ maxLength: 4 }),
    }),
    fc.record({ type: fc.constant('remove-line' as const), list: fc.constant('jewels' as const), line: fc.nat(3) }),
    fc.record({ type: fc.constant('add-reading' as const), key: fc.constant('thirdWheel' as const) }),
    fc.constant<EntryAction>({ type: 'leave-cell' }),
  )
  fc.assert(
    fc.property(fc.array(action, { maxLength: 40 }), (actions) => {
      const done = run(actions)
      const back = run(
        done.past.map(() => ({ type: 'undo' }) as const),
        done,
      )
      expect(back.entry).toEqual(blankEntry())
      expect(
        run(
          back.future.map(() => ({ type: 'redo' }) as const),
          back,
        ).entry,
      ).toEqual(done.entry)
    }),
  )
})

const inLignes = openEntry(blankEntry(), { source: 'hb1', page: '44' }, { hb1: 'ligne', hb2: 'mm' })
const size = (printed: string): EntryAction => ({ type: 'type-value', key: 'diameterMm', printed })

test('a bare size under a source in lignes is kept with its unit from the first key stroke, and shown as typed', () => {
  const typing = run([size('1'), size('17')], inLignes)
  expect(typing.entry.fields.diameterMm).toEqual([{ printed: "17'''", source: 'hb1', page: '44' }])
  expect(typing.typed).toEqual({ cell: 'diameterMm', text: '17' })
  expect(run([{ type: 'leave-cell' }], typing).typed).toBeNull()
  expect(run([{ type: 'undo' }], typing).typed).toBeNull()
})

test('a unit that is typed counts, and a value corrected later is in the unit of its own source', () => {
  expect(run([size('38.35 mm')], inLignes).entry.fields.diameterMm?.[0]?.printed).toBe('38.35 mm')
  const corrected = run([size('17'), hold('hb2', ''), size('18')], inLignes)
  expect(corrected.entry.fields.diameterMm).toEqual([{ printed: "18'''", source: 'hb1', page: '44' }])
  const other = run([hold('hb2', ''), size('38')], inLignes)
  expect(other.entry.fields.diameterMm).toEqual([{ printed: '38', source: 'hb2' }])
})

test('the units of a source that came to the shelf while typing are known from then on', () => {
  const known = run([{ type: 'know-units', units: { hb3: 'inch' } }, hold('hb3', ''), size('1.5')], inLignes)
  expect(known.entry.fields.diameterMm?.[0]?.printed).toBe('1.5"')
})

test('an overrule, and its taking back, is a step each', () => {
  const overrule = { severity: 'accepted', reason: 'Two caps added.', of: 'disagrees' } as const
  const made = run([{ type: 'overrule', proof: 'jewels-add-up', overrule }])
  expect(made.entry.overrules).toEqual([{ proof: 'jewels-add-up', ...overrule }])
  const undone = run([{ type: 'undo' }], made)
  expect(undone.entry).toEqual(blankEntry())
  expect(run([{ type: 'redo' }], undone).entry).toEqual(made.entry)
  expect(run([{ type: 'overrule', proof: 'jewels-add-up', overrule: null }], made).entry).toEqual(blankEntry())
})
