import { expect, it } from 'vitest'
import { guessSpringColumns } from '../../../core/exchange/guess-spring-columns.ts'

const kindsOf = (rows: readonly (readonly string[])[]) => guessSpringColumns(rows).columns.map(({ kind }) => kind)

it('finds the headings under a title', () => {
  const rows = [
    ['Price list, spring', '', '', '', ''],
    [],
    ['Art.-Nr.', 'Höhe', 'Stärke 1/100', 'Länge', 'Preis'],
    ['4001', '1,50', '10,5', '360', '8,40'],
  ]
  const guess = guessSpringColumns(rows)
  expect(guess.headingRows).toBe(3)
  expect(guess.decimalMark).toBe(',')
  expect(guess.columns.map(({ kind, unit }) => [kind, unit])).toEqual([
    ['supplierRef', null],
    ['heightMm', null],
    ['thicknessMm', 'hundredths-mm'],
    ['lengthMm', null],
    ['price', null],
  ])
})

it('knows sizes without headings by their proportions, in whatever order and unit', () => {
  const millimetres = [
    ['A1', '360', '0.105', '1.50', '10.5'],
    ['A2', '300', '0.09', '1.20', '9.0'],
  ]
  expect(kindsOf(millimetres)).toEqual(['supplierRef', 'lengthMm', 'thicknessMm', 'heightMm', 'barrelMm'])
  const tenths = guessSpringColumns([
    ['A1', '15', '10.5', '360'],
    ['A2', '12', '9', '300'],
  ])
  expect(tenths.columns.map(({ kind, unit }) => [kind, unit])).toEqual([
    ['supplierRef', null],
    ['heightMm', 'tenths-mm'],
    ['thicknessMm', 'hundredths-mm'],
    ['lengthMm', 'mm'],
  ])
  const inches = guessSpringColumns([['A1', '0.059', '0.0041', '14.2']])
  expect(inches.columns.map(({ unit }) => unit)).toEqual([null, 'inch', 'inch', 'inch'])
})

it('finds a column with all the sizes in one cell', () => {
  expect(
    kindsOf([
      ['A1', '1,50 x 0,105 x 360'],
      ['A2', '1,20 x 0,09 x 300'],
    ]),
  ).toEqual(['supplierRef', 'sizes'])
})

it('says nothing of a table without springs, and nothing of an empty one', () => {
  expect(
    kindsOf([
      ['blue', 'blue'],
      ['red', 'blue'],
    ]),
  ).toEqual(['supplierRef', null])
  expect(guessSpringColumns([])).toEqual({ headingRows: 0, columns: [], decimalMark: '.' })
})
