import fc from 'fast-check'
import { expect, test } from 'vitest'
import { gaugeCells } from '../../../core/exchange/gauge-cells.ts'
import { readGaugeRows } from '../../../core/exchange/read-gauge-rows.ts'

const told = (text: string) => gaugeCells(text).map(({ number, size }) => [number, size])

test.each([
  ['21\t0,05', ['21', '0,05']],
  ['2/0;0,27', ['2/0', '0,27']],
  ['5½; 12/100', ['5½', '12/100']],
  ['21,0.05', ['21', '0.05']],
  ['21,0,05', ['21', '0,05']],
  ['21, 12/100', ['21', '12/100']],
  ['14,0.0047"', ['14', '0.0047"']],
  ['21 0,05', ['21', '0,05']],
  ['21 0.05 mm', ['21', '0.05 mm']],
  ['5 1/2 0.21', ['5 1/2', '0.21']],
  ['5 1/2 12/100', ['5 1/2', '12/100']],
  ['2/0 = 0.27', ['2/0', '0.27']],
  ['14;', ['14', '']],
])('%s is two columns', (line, columns) => {
  expect(told(line)).toEqual([columns])
})

test('a first line that is no heading stays, to be named as a row', () => {
  expect(told('of the Harrow gauge\n14;0.12')).toEqual([
    ['of the Harrow gauge', ''],
    ['14', '0.12'],
  ])
  expect(told('fine;0.12')).toEqual([['fine', '0.12']])
})

test.each(['12,5', 'fine', '14', '12,5,0,14'])('%s stays whole, since nobody can say where it parts', (line) => {
  expect(told(line)).toEqual([[line, '']])
})

test('more columns than two stay in sight and are refused', () => {
  expect(told('14\t0.12\t0.13')).toEqual([['14', '0.12  0.13']])
  const { problems } = readGaugeRows(gaugeCells('14\t0.12\t0.13'), { measures: 'thickness', unit: 'mm' })
  expect(problems).toHaveLength(1)
})

test.each([
  ['No.\tmm', '0.12', '0.12'],
  ['Number;1/100 mm', '12', '12/100'],
  ['Nummer;Stärke (1/100)', '12', '12/100'],
  ['Gauge\tThickness, in', '.0047', '.0047"'],
])('the heading “%s” is left out, and its unit written to bare sizes', (heading, size, written) => {
  const mark = heading.includes('\t') ? '\t' : ';'
  expect(told(`${heading}\n\n14${mark}${size}\r\n`)).toEqual([['14', written]])
})

test('a table written with any of the marks is taken apart as it was put together', () => {
  const rows = fc.array(fc.tuple(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 1, max: 99 })), { minLength: 1 })
  fc.assert(
    fc.property(rows, fc.constantFrom('\t', ';', ',', ' ', ' = '), fc.constantFrom('.', ','), (made, mark, decimal) => {
      const cells = made.map(([number, size]) => [String(number), `0${decimal}${String(size).padStart(2, '0')}`])
      expect(told(cells.map((row) => row.join(mark)).join('\n'))).toEqual(cells)
    }),
  )
})
