import { expect, test } from 'vitest'
import { gaugesOf } from '../../../electron/terminal/gauges-of.ts'
import { gaugeTableOf } from '../../support/gauge-table-of.ts'

const table = gaugeTableOf('Harrow', { '2/0': 0.27 })
const file = (...gauges: unknown[]) => JSON.stringify({ lignebook: 1, gauges })

test('the gauge tables of a file are read, and a file without any has none', () => {
  expect(gaugesOf('in.json', file(table))).toEqual([table])
  expect(gaugesOf('in.json', '{"lignebook":1}')).toEqual([])
})

test('a table that cannot be read is named with its place', () => {
  const bad = { ...table, rows: [...table.rows, { number: '2/0', mm: 0.28 }] }
  expect(() => gaugesOf('in.json', file(table, bad))).toThrow(
    'in.json, gauges[1].rows[1].number: number "2/0" stands in row 1 already; correct one of the two.',
  )
})
