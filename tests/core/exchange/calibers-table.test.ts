import { expect, test } from 'vitest'
import { entriesFromRows, rowsFromEntries } from '../../../core/exchange/calibers-table.ts'

const rows = [
  ['Maker', 'Designation', 'Diameter', 'beatRateVph', 'Shelf'],
  ['Verrin', '17-220', "17'''", '18 000', 'B3'],
  ['Verrin', '17-221', '', '', ''],
]

test('rows become entries, and unknown columns are kept', () => {
  const table = entriesFromRows(rows)
  expect(table.problems).toEqual([])
  expect(table.unknownHeadings).toEqual(['Shelf'])
  expect(table.entries[0]?.entry.fields).toEqual({
    diameterMm: [{ printed: "17'''", chosen: true }],
    beatRateVph: [{ printed: '18 000', chosen: true }],
    Shelf: [{ printed: 'B3', chosen: true }],
  })
})

test('entries written as rows come back the same', () => {
  const entries = entriesFromRows(rows).entries.map(({ entry }) => entry)
  expect(entriesFromRows(rowsFromEntries(entries)).entries.map(({ entry }) => entry)).toEqual(entries)
})

test('problems name the row or column', () => {
  expect(entriesFromRows([]).problems).toEqual([{ code: 'no-rows' }])
  expect(entriesFromRows([['Maker', 'Diameter']]).problems).toEqual([{ code: 'no-column', field: 'designation' }])
  expect(entriesFromRows([['Maker', 'Designation', 'maker']]).problems).toMatchObject([
    { code: 'same-column', column: 3 },
  ])
  const uneven = entriesFromRows([
    ['Maker', 'Designation'],
    ['Verrin', '1', 'x'],
    ['', '2'],
    ['', ''],
    ['Verrin', '3'],
  ])
  expect(uneven.problems).toEqual([
    { code: 'too-many-cells', row: 2 },
    { code: 'no-name', row: 3, field: 'maker' },
  ])
  expect(uneven.entries.map(({ row }) => row)).toEqual([5])
})
