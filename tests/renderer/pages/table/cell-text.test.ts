import { expect, test } from 'vitest'
import { readTableRow } from '../../../../core/exchange/pasted-table.ts'
import { columnFromHeading } from '../../../../core/exchange/table-column.ts'
import { cellEcho, cellSentence, columnName } from '../../../../renderer/pages/table/cell-text.ts'

const said = (heading: string, typed: string) => {
  const column = columnFromHeading(heading)
  const cell = readTableRow([typed], [column], { maker: 'Verrin' }).cells[0]
  if (!cell || column.field === null) throw new Error('no cell')
  return { echo: cellEcho(column.field, typed, cell), sentence: cellSentence(column.field, typed, cell) }
}

test('a cell says what it was read as where the print does not', () => {
  expect(said('Diamètre (lignes)', '17')).toEqual({ echo: '38.35 mm', sentence: 'Diameter: 17 is read as 38.35 mm.' })
  expect(said('Höhe (mm)', '4,2')).toEqual({ echo: '', sentence: 'Height: 4,2.' })
  expect(said('Escapement', 'Pin lever').echo).toBe('pin-lever')
})

test('a refused cell says why, an unusual one that it is kept', () => {
  expect(said('Third wheel', 'many')).toEqual({
    echo: 'refused',
    sentence: 'Third wheel: "many" cannot be read; write the figure, with its unit if need be, or empty the cell.',
  })
  expect(said('Höhe (mm)', '40').sentence).toMatch(/is unusual.*Kept as written\.$/)
})

test('a column left out is called by its heading, or by its place', () => {
  expect(columnName(columnFromHeading('Rayon'), 2)).toBe('Rayon')
  expect(columnName(columnFromHeading(''), 2)).toBe('column 3')
  expect(columnName(columnFromHeading('Hauteur'), 2)).toBe('Height')
})
