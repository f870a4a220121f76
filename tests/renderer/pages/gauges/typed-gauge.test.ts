import { expect, test } from 'vitest'
import {
  gaugeOfTyped,
  typedGauge,
  withCell,
  withoutRow,
  withPasted,
} from '../../../../renderer/pages/gauges/typed-gauge.ts'
import { gaugeTableOf } from '../../../support/gauge-table-of.ts'

const table = { ...gaugeTableOf('Harrow', { '2/0': 0.27 }, { source: 'hb', page: '9', place: 'second' }), later: 1 }

test('a table that is opened and saved untouched is the same, with what a newer version wrote', () => {
  const printed = { ...table, rows: [...table.rows, { number: '14', mm: 0.12, printed: '12/100' }] }
  expect(gaugeOfTyped(typedGauge(printed), printed)).toEqual({ ok: true, table: printed })
})

test('what is cleared is taken out', () => {
  const typed = { ...typedGauge(table), source: ' ', page: '', place: '' as const }
  expect(gaugeOfTyped(typed, table)).toEqual({
    ok: true,
    table: { name: 'Harrow', measures: 'thickness', rows: table.rows, later: 1 },
  })
})

test('a blank row stands last, whatever is typed, pasted or taken out', () => {
  const blank = { number: '', size: '' }
  const { cells } = typedGauge(null)
  expect(cells).toEqual([blank])
  const one = withCell(cells, 0, 'number', '14')
  expect(one).toEqual([{ number: '14', size: '' }, blank])
  expect(withoutRow(one, 0)).toEqual([blank])
  expect(withoutRow([...one.slice(0, 1)], 0)).toEqual([blank])
})

test('a pasted table takes the place of a blank row, and else comes after the row one is in', () => {
  const { cells } = typedGauge(table)
  const numbers = (rows: typeof cells) => rows.map(({ number }) => number)
  expect(numbers(withPasted(cells, 1, '14\t0.12\n13\t0.13'))).toEqual(['2/0', '14', '13', ''])
  expect(numbers(withPasted(cells, 0, 'no.;mm\n14;0.12'))).toEqual(['2/0', '14', ''])
})

test('all that keeps it from being a table is told at once', () => {
  const typed = { ...typedGauge(null), name: '1931', cells: [{ number: 'fine', size: '' }] }
  const made = gaugeOfTyped(typed, null)
  expect(made).toMatchObject({ ok: false, name: 'no-letter' })
  expect(made.ok ? [] : made.problems.map(({ problem }) => problem.code)).toEqual(['no-gauge-number', 'size-missing'])
  expect(gaugeOfTyped(typedGauge(null), null)).toEqual({ ok: false, name: 'missing', problems: [] })
})
