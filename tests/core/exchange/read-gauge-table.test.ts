import { expect, test } from 'vitest'
import { readGaugeTable } from '../../../core/exchange/read-gauge-table.ts'
import { gaugeTableOf } from '../../support/gauge-table-of.ts'

const table = gaugeTableOf('Harrow', { '2/0': 0.27, 14: 0.12 })

test('a sound table is read whole, with what a newer version wrote', () => {
  const written = { ...table, later: { kept: 1 } }
  expect(readGaugeTable(written)).toEqual({ ok: true, table: written })
})

test.each([
  ['no name', { ...table, name: undefined }, 'name', 'not-in-form'],
  ['a size in words', { ...table, rows: [{ number: '1', mm: 'thin' }] }, 'rows[0].mm', 'not-in-form'],
  ['a number twice', { ...table, rows: [...table.rows, { number: '14', mm: 0.13 }] }, 'rows[2].number', 'number-twice'],
  ['an impossible size', { ...table, rows: [{ number: '1', mm: 12 }] }, 'rows[0].mm', 'impossible-size'],
])('with %s it is refused at its place', (_, written, place, code) => {
  expect(readGaugeTable(written)).toEqual({ ok: false, problem: { place, problem: expect.objectContaining({ code }) } })
})

test('what is no table at all is refused', () => {
  expect(readGaugeTable('Harrow')).toEqual({ ok: false, problem: { place: '', problem: { code: 'not-in-form' } } })
})
