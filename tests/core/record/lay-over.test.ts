import { expect, test } from 'vitest'
import type { CaliberEntry, EntryReading } from '../../../core/exchange/library-file.ts'
import { blankEntry } from '../../../core/record/entry.ts'
import { layOver } from '../../../core/record/lay-over.ts'

const entry = (fields: Record<string, EntryReading[]>): CaliberEntry => ({
  ...blankEntry(),
  maker: 'Verrin',
  designation: '17-220',
  fields,
})
const barrelTeeth = (stored: EntryReading[], said: EntryReading) =>
  layOver(entry({ barrelTeeth: stored }), entry({ barrelTeeth: [said] })).fields.barrelTeeth

test('what the table says is chosen, and what another source says stays beside it', () => {
  const stored = [{ printed: '78', source: 'a', note: 'seen', chosen: true }]
  expect(barrelTeeth(stored, { printed: '80', source: 'b', chosen: true })).toEqual([
    { printed: '80', source: 'b', chosen: true },
    { printed: '78', source: 'a', note: 'seen' },
  ])
})

test('the later word of one source takes the place of its earlier one', () => {
  const stored = [
    { printed: '78', source: 'a', page: '4' },
    { printed: '79', chosen: true },
  ]
  expect(barrelTeeth(stored, { printed: '80', source: 'a', page: '5' })).toEqual([
    { printed: '80', source: 'a', page: '5', chosen: true },
    { printed: '79' },
  ])
})

test('the same print keeps its note, and gains the source', () => {
  expect(barrelTeeth([{ printed: '80', note: 'counted', chosen: true }], { printed: '80', source: 'a' })).toEqual([
    { printed: '80', note: 'counted', source: 'a', chosen: true },
  ])
  expect(barrelTeeth([{ printed: '80', source: 'a', chosen: true }], { printed: '80' })).toEqual([
    { printed: '80', source: 'a', chosen: true },
  ])
})

test('what the table does not say stays, the names and lists too', () => {
  const stored = { ...entry({ shape: [{ printed: 'round', chosen: true }] }), parts: [{ part: 'mainspring' }] }
  const said = { ...entry({ barrelTeeth: [{ printed: '80' }] }), maker: 'VERRIN' }
  expect(layOver(stored, said)).toEqual({
    ...stored,
    fields: { ...stored.fields, barrelTeeth: [{ printed: '80', chosen: true }] },
  })
})
