import fc from 'fast-check'
import { expect, test } from 'vitest'
import { entryOfTableRow, isBlankTableRow, readTableRow, refusedCells } from '../../../core/exchange/pasted-table.ts'
import { columnFromHeading } from '../../../core/exchange/table-column.ts'
import { readEntry } from '../../../core/record/read-entry.ts'
import { wordCellFault } from '../../../core/wording/table-problem.ts'

const columns = ['Calibre', 'Diamètre (lignes)', 'Hauteur (mm)', 'Alternances', 'Rayon', 'Force (1/100)'].map(
  columnFromHeading,
)
const verrin = { maker: 'Verrin' }
const handbook = { source: 'quellin-1931', page: '44' }

test('a row is read under its columns, bare numbers in the unit over them', () => {
  const row = readTableRow(['17-220', '17', '4,2', '18 000', 'B3', '18'], columns, verrin)
  expect(row).toMatchObject({ maker: 'Verrin', designation: '17-220', refused: null })
  const { fields, maker, designation } = entryOfTableRow(row, columns, handbook)
  const printed = (text: string) => [{ printed: text, source: 'quellin-1931', page: '44', chosen: true }]
  expect({ maker, designation }).toEqual({ maker: 'Verrin', designation: '17-220' })
  expect(fields).toEqual({
    diameterMm: printed("17'''"),
    heightMm: printed('4,2'),
    beatRateVph: printed('18 000'),
    springThicknessMm: printed('18/100'),
  })
})

test('a cell that cannot be read is refused with its reason, and the others go in', () => {
  const row = readTableRow(['17-221', 'vast', '4.2', '18 000'], columns, verrin)
  expect(refusedCells(row)).toEqual([{ column: 1, printed: 'vast', problem: { code: 'unreadable', text: 'vast' } }])
  expect(Object.keys(entryOfTableRow(row, columns, handbook).fields)).toEqual(['heightMm', 'beatRateVph'])
})

test('a size number under lignes stays refused, and so does a size that no watch has', () => {
  const problems = (cell: string) =>
    refusedCells(readTableRow(['1', cell], columns, verrin)).map(({ problem }) => problem.code)
  expect(problems('6/0')).toEqual(['size-number'])
  expect(problems('1700')).toEqual(['impossible'])
})

test('without source there is no origin, and without page none of the page', () => {
  const row = readTableRow(['17-220', '17'], columns, verrin)
  expect(entryOfTableRow(row, columns, { source: '', page: '44' }).fields.diameterMm).toEqual([
    { printed: "17'''", chosen: true },
  ])
  expect(entryOfTableRow(row, columns, { source: 'a', page: ' ' }).fields.diameterMm).toEqual([
    { printed: "17'''", source: 'a', chosen: true },
  ])
})

test('a row without designation or maker is refused whole; a maker in the row goes before the one above', () => {
  expect(readTableRow(['', '17'], columns, verrin).refused).toBe('no-designation')
  expect(readTableRow(['17-220', '17'], columns, { maker: ' ' }).refused).toBe('no-maker')
  const withMaker = ['Fabricant', 'Calibre'].map(columnFromHeading)
  expect(readTableRow(['Brandsma', '9-2'], withMaker, verrin)).toMatchObject({ maker: 'Brandsma', refused: null })
})

test('a field that stands in two columns is taken from the first', () => {
  const twice = ['Calibre', 'Diamètre (lignes)', 'Diamètre (mm)'].map(columnFromHeading)
  const row = readTableRow(['17-220', '17', '38.35'], twice, verrin)
  expect(refusedCells(row)).toEqual([{ column: 2, printed: '38.35', problem: { code: 'said-twice', text: '38.35' } }])
  expect(refusedCells(readTableRow(['17-220', '', '38.35'], twice, verrin))).toEqual([])
})

test('a row of nothing but gaps is blank', () => {
  expect(isBlankTableRow([])).toBe(true)
  expect(isBlankTableRow([' ', '\t'])).toBe(true)
  expect(isBlankTableRow(['', '0'])).toBe(false)
})

test('no table makes it throw, every cell is taken or refused, and what is taken can be read again', () => {
  const cell = fc.oneof(
    fc.string({ unit: 'grapheme', maxLength: 30 }),
    fc.constantFrom('17', '8 3/4', '6/0', '18/100', '18 000', '1,234', "17'''", '', '7x5', '__proto__'),
  )
  const heading = fc.oneof(
    cell,
    fc.constantFrom('Calibre', 'Diamètre (lignes)', 'Höhe', 'Slaggetal', 'Third wheel', 'Forme', 'Fabricant', 'Force'),
  )
  fc.assert(
    fc.property(
      fc.array(heading, { maxLength: 8 }),
      fc.array(cell, { maxLength: 9 }),
      cell,
      (headings, cells, maker) => {
        const read = headings.map(columnFromHeading)
        const row = readTableRow(cells, read, { maker })
        const refused = refusedCells(row)
        const entry = entryOfTableRow(row, read, handbook)
        const named = row.cells.filter(
          ({ column, read: cellRead }) => cellRead.ok && ['maker', 'designation'].includes(read[column]?.field ?? ''),
        )
        expect(Object.keys(entry.fields).length + refused.length + named.length).toBe(row.cells.length)
        for (const { problem } of refused) expect(wordCellFault('Label', problem)).toMatch(/^Label: /)
        if (row.refused === null) expect(readEntry(entry).problems).toEqual([])
      },
    ),
  )
})
