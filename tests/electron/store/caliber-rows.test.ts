import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type CaliberEntry, fileCaliberSchema } from '../../../core/exchange/library-file.ts'
import { openCaliber } from '../../../core/record/entry.ts'
import { readEntry } from '../../../core/record/read-entry.ts'
import {
  caliberRow,
  listKeys,
  listRows,
  listTables,
  nameOf,
  overruleRows,
  type ReadCaliber,
  readingRows,
} from '../../../electron/store/caliber-rows.ts'
import { arbitraryFileCaliber } from '../../support/arbitrary-library.ts'
import { fullEntry } from '../../support/full-entry.ts'
import { entryOf, temporaryLibrary } from '../../support/temporary-library.ts'

const read = (entry: CaliberEntry): ReadCaliber => ({
  entry,
  values: readEntry(entry).caliber,
  disagree: 0,
  doubtful: 0,
})

test('a round caliber is summed up by its diameter as printed, a shaped one by its length and width', () => {
  const sizeOf = (fields: Record<string, string>) => caliberRow(read(entryOf('Verrin', '1', fields))).size_printed
  expect(sizeOf({ diameterMm: "17'''" })).toBe("17'''")
  expect(sizeOf({ lengthMm: '24.0', widthMm: '15,5 mm' })).toBe('24.0 × 15,5 mm')
  expect(sizeOf({ lengthMm: '24.0' })).toBeNull()
})

test('the summary is that of the chosen reading, not of the first', () => {
  const entry = {
    ...entryOf('Verrin', '1'),
    fields: { diameterMm: [{ printed: "17'''" }, { printed: '38.5 mm', chosen: true }] },
  }
  expect(caliberRow(read(entry))).toMatchObject({ size_printed: '38.5 mm', diameter_mm: 38.5 })
})

test('a reading that cannot be read keeps its print and has no value', () => {
  const rows = readingRows(read(entryOf('Verrin', '1', { beatRateVph: 'quick', thirdWheel: '75' })))
  expect(rows).toMatchObject([
    { position: 0, field: 'beatRateVph', printed: 'quick', number: null, word: null, chosen: 0 },
    { position: 1, field: 'thirdWheel', printed: '75', number: 75, chosen: 1 },
  ])
})

test('two readings of one print are kept apart by their source', () => {
  const readings = [
    { printed: '480', source: 'hb1' },
    { printed: '480', source: 'hb2', chosen: true },
  ]
  const rows = readingRows(read({ ...entryOf('Verrin', '1'), fields: { springLengthMm: readings } }))
  expect(rows.map(({ source, number, chosen }) => [source, number, chosen])).toEqual([
    ['hb1', 480, 0],
    ['hb2', 480, 1],
  ])
})

test('every reading of any file has one row in its order, and no field has two that are chosen', () => {
  fc.assert(
    fc.property(arbitraryFileCaliber, (document) => {
      const caliber = read(openCaliber(fileCaliberSchema.parse(document)))
      const rows = readingRows(caliber)
      const typed = Object.entries(caliber.entry.fields).flatMap(([field, all]) =>
        all.map(({ printed }) => [field, printed]),
      )
      expect(rows.map(({ field, printed }) => [field, printed])).toEqual(typed)
      expect(rows.map(({ position }) => position)).toEqual(typed.map((_, index) => index))
      const chosen = rows.filter((row) => row.chosen === 1).map(({ field }) => field)
      expect(new Set(chosen).size).toBe(chosen.length)
    }),
    { numRuns: 200 },
  )
})

test('a line of a list stands whole beside its columns, numbers as numbers', () => {
  const caliber = read(fullEntry())
  expect(listRows(caliber, 'jewels')).toEqual([
    {
      position: 0,
      source: 'hb1',
      line: JSON.stringify(fullEntry().jewels[0]),
      place: 'balance',
      kind: 'hole',
      count: 2,
    },
  ])
  expect(listRows(caliber, 'depths')).toMatchObject([
    { driver: 'barrel', driven: 'centre', driver_pitch_mm: 1.2, centre_distance_mm: null },
  ])
  expect(listRows(caliber, 'stripOrder')).toMatchObject([{ part: 'balance cock', after: 'dial' }])
})

test('a line that cannot be read is kept whole, and no number is guessed for it', () => {
  const jewels = [
    { place: 'balance', kind: 'hole', count: 'some' },
    { place: 'pallet', kind: 'hole', count: 2 },
  ]
  const rows = listRows(read(entryOf('Verrin', '1', {}, { jewels })), 'jewels')
  expect(rows.map(({ line }) => JSON.parse(String(line)) as unknown)).toEqual(jewels)
  expect(rows.map(({ place, count }) => [place, count])).toEqual([
    ['balance', null],
    ['pallet', null],
  ])
})

test('each list has a table with the columns that its rows fill', async () => {
  const { connection } = await temporaryLibrary()
  for (const key of listKeys) {
    const { table, columns } = listTables[key]
    const found = connection.prepare('select name from pragma_table_info(?)').pluck().all(table)
    expect([...found].sort()).toEqual(['caliber_id', 'line', 'position', 'source', ...Object.values(columns)].sort())
  }
})

test('a maker of signs alone still has a name to be known by', () => {
  expect(nameOf('Größ & Söhne', '17-220')).toEqual({ maker_folded: 'gross sohne', designation_folded: '17-220' })
  expect(nameOf('?', '1').maker_folded).toBe('?')
})

test('an overrule is a row a proof, with what this version does not know beside it', () => {
  expect(overruleRows(fullEntry())).toEqual([
    {
      position: 0,
      proof: 'jewels-add-up',
      severity: 'accepted',
      reason: 'Two caps added.',
      outcome: 'disagrees',
      extra: '{"later":"kept"}',
    },
    expect.objectContaining({ position: 1, proof: 'some-later-proof', outcome: 'agrees', extra: '{}' }),
  ])
  expect(overruleRows(entryOf('Verrin', '1'))).toEqual([])
})

test('a field of a newer version may be called as a part of every object is', () => {
  const entry = { ...entryOf('Verrin', '1'), fields: { constructor: [{ printed: 'x' }], toString: [{ printed: '7' }] } }
  expect(readingRows(read(entry))).toMatchObject([
    { field: 'constructor', printed: 'x', number: null, word: null },
    { field: 'toString', printed: '7', number: null, word: null },
  ])
})
