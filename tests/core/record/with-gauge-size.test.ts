import { expect, test } from 'vitest'
import { blankEntry } from '../../../core/record/entry.ts'
import { readEntry } from '../../../core/record/read-entry.ts'
import { withGaugeSize } from '../../../core/record/with-gauge-size.ts'
import { gaugeTableOf } from '../../support/gauge-table-of.ts'

const table = gaugeTableOf('Brandsma', {}, { source: 'hb', page: '9' })
const read = { table, row: { number: '14', mm: 0.12, printed: '12/100' } }
const gauge = [{ printed: 'Brandsma 14', source: 'list', page: '3' }]

test('the size is a reading with the place of the table, and the printed gauge stays', () => {
  const entry = withGaugeSize({ ...blankEntry(), fields: { springGauge: gauge } }, read, 'Brandsma 14')
  expect(entry.fields).toEqual({
    springGauge: gauge,
    springThicknessMm: [
      { printed: '12/100', source: 'hb', page: '9', note: 'by the gauge table Brandsma, from “Brandsma 14”' },
    ],
  })
  expect(readEntry(entry).caliber.values.springThicknessMm).toBe(0.12)
})

test('what is printed of the size already stays, and stays chosen', () => {
  for (const printed of [[{ printed: '0.13' }], [{ printed: '0.14' }, { printed: '0.13', chosen: true }]]) {
    const entry = withGaugeSize({ ...blankEntry(), fields: { springThicknessMm: printed } }, read, 'Brandsma 14')
    expect(entry.fields.springThicknessMm).toHaveLength(printed.length + 1)
    expect(readEntry(entry).caliber.values.springThicknessMm).toBe(0.13)
  }
})

test('a size of height goes to the height, and a table of one’s own has no source', () => {
  const own = { table: gaugeTableOf('Brandsma', {}, { measures: 'height' }), row: { number: '12', mm: 1.5 } }
  expect(withGaugeSize(blankEntry(), own, 'Brandsma 12').fields).toEqual({
    springHeightMm: [{ printed: '1.5', note: 'by the gauge table Brandsma, from “Brandsma 12”' }],
  })
})
