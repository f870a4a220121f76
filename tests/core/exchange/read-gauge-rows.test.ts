import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type GaugeCells, readGaugeRows } from '../../../core/exchange/read-gauge-rows.ts'
import type { LengthUnit } from '../../../core/quantities/length-units.ts'
import { gaugeRowFaults } from '../../../core/springs/gauge-table.ts'

const cells = (...rows: readonly (readonly [string, string])[]): GaugeCells[] =>
  rows.map(([number, size]) => ({ number, size }))
const read = (rows: readonly GaugeCells[], unit: LengthUnit = 'mm') =>
  readGaugeRows(rows, { measures: 'thickness', unit })

test('sizes are read as printed, and the print is kept where it is more than the bare figure', () => {
  const { rows, problems } = read(
    cells(['21', '0.05'], ['20', '0,06'], ['', ' '], ['2/0', '27/100'], ['5½', '0.0047"'], ['1', '70 µm']),
  )
  expect(problems).toEqual([])
  expect(rows).toEqual([
    { number: '21', mm: 0.05 },
    { number: '20', mm: 0.06, printed: '0,06' },
    { number: '2/0', mm: 0.27, printed: '27/100' },
    { number: '5½', mm: 0.11938, printed: '0.0047"' },
    { number: '1', mm: 0.07, printed: '70 µm' },
  ])
})

test.each([
  ['hundredths-mm', '12', 0.12],
  ['hundredths-mm', '12,5', 0.125],
  ['inch', '.0047', 0.11938],
  ['micrometre', '120', 0.12],
  ['hundredths-mm', '0.12 mm', 0.12],
] as const)('a bare figure in %s: %s', (unit, size, mm) => {
  expect(read(cells(['14', size]), unit).rows[0]?.mm).toBeCloseTo(mm, 12)
})

test('every row that cannot be read is named, and none of them is among the rows', () => {
  const { rows, problems } = read(
    cells(
      ['14', '0.12'],
      ['', '0.13'],
      ['13', ''],
      ['fine', '0.1'],
      ['14', '0.11'],
      ['9', '17'],
      ['8', '0.1-0.2'],
      ['7', '6/0'],
    ),
  )
  expect(rows).toEqual([{ number: '14', mm: 0.12 }])
  expect(problems.map(({ row, cell, problem }) => [row, cell, problem.code])).toEqual([
    [1, 'number', 'number-missing'],
    [2, 'size', 'size-missing'],
    [3, 'number', 'no-gauge-number'],
    [4, 'number', 'number-twice'],
    [5, 'size', 'impossible'],
    [6, 'size', 'no-single-size'],
    [7, 'size', 'size-number'],
  ])
})

test('whatever is typed, the rows that are read stand in a table, and every other row is named', () => {
  const cell = fc.string({ unit: fc.constantFrom(...'0123456789.,/ ½"m'), maxLength: 7 })
  const typed = fc.array(fc.record({ number: cell, size: cell }), { maxLength: 12 })
  fc.assert(
    fc.property(typed, (rows) => {
      const answer = read(rows)
      expect(gaugeRowFaults({ name: 'Harrow', measures: 'thickness', rows: [...answer.rows] })).toEqual([])
      const named = new Set(answer.problems.map(({ row }) => row))
      const blank = rows.filter(({ number, size }) => number.trim() === '' && size.trim() === '').length
      expect(answer.rows.length + named.size + blank).toBe(rows.length)
    }),
  )
})
