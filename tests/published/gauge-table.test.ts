import { expect, test } from 'vitest'
import { gaugeCells } from '../../core/exchange/gauge-cells.ts'
import { readGaugeRows } from '../../core/exchange/read-gauge-rows.ts'
import { gaugeReads } from '../../core/springs/gauge-reads.ts'
import type { GaugeTable } from '../../core/springs/gauge-table.ts'
import { caliberPrinted } from '../support/caliber-printed.ts'

/**
 * A slit gauge for the strength of springs, European, of one pattern: its scale runs from 21 = 0.05 mm to 5/0 = 0.30 mm,
 * and after 0 come 2/0, 3/0 and so on [P] (Wikipedia, "Mainspring gauge"). The two ends are printed; the rows between are
 * an interpolation [D]: 26 sizes over 0.25 mm, so 0.01 mm a number on an even scale. Makers' scales differed.
 */
const numbers = [...Array.from({ length: 22 }, (_, at) => String(21 - at)), '2/0', '3/0', '4/0', '5/0']
const pasted = numbers.map((number, at) => `${number}\t0,${String(5 + at).padStart(2, '0')}`).join('\r\n')

const entered = (): GaugeTable => {
  const { rows, problems } = readGaugeRows(gaugeCells(pasted), { measures: 'thickness', unit: 'mm' })
  expect(problems).toEqual([])
  return { name: 'Slit gauge', measures: 'thickness', rows: [...rows] }
}
const byTable = (number: string, tables: readonly GaugeTable[]) =>
  gaugeReads(caliberPrinted({ springGauge: [`No. ${number}, slit gauge`] }), tables)?.reads[0]?.row.mm

test('a table entered from the slit gauge has its 26 sizes', () => {
  expect(entered().rows).toHaveLength(26)
})

test('its printed ends read back: 21 is 0.05 mm and 5/0 is 0.30 mm [P]', () => {
  expect(byTable('21', [entered()])).toBe(0.05)
  expect(byTable('5/0', [entered()])).toBe(0.3)
})

test('its rows between read back as they were interpolated [D]: 0.26 mm less a hundredth a number, more a hundredth a nought', () => {
  const table = entered()
  for (let number = 21; number >= 0; number -= 1)
    expect(byTable(String(number), [table])).toBeCloseTo(0.26 - 0.01 * number, 12)
  for (let noughts = 2; noughts <= 5; noughts += 1)
    expect(byTable(`${noughts}/0`, [table])).toBeCloseTo(0.25 + 0.01 * noughts, 12)
})

test('without a table nothing is converted, and a table of another gauge converts nothing: makers’ scales differed', () => {
  expect(byTable('12', [])).toBeUndefined()
  expect(byTable('12', [{ ...entered(), name: 'Plate gauge' }])).toBeUndefined()
})

test('a metric gauge counts thickness in hundredths and height in tenths of a millimetre: no. 12 is 0.12 mm [P] (Jendritzki 1950, section 3)', () => {
  const rows = (measures: 'thickness' | 'height', unit: 'hundredths-mm' | 'tenths-mm') => [
    ...readGaugeRows([{ number: '12', size: '12' }], { measures, unit }).rows,
  ]
  const tables: readonly GaugeTable[] = [
    { name: 'Metric gauge', measures: 'height', rows: rows('height', 'tenths-mm') },
    { name: 'Metric gauge', measures: 'thickness', rows: rows('thickness', 'hundredths-mm') },
  ]
  const reads = gaugeReads(caliberPrinted({ springGauge: ['Metric gauge, height 12, strength 12'] }), tables)?.reads
  expect(reads?.map(({ row }) => row.mm)).toEqual([1.2, 0.12])
})
