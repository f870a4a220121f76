import { expect, test } from 'vitest'
import { gaugeReads } from '../../../core/springs/gauge-reads.ts'
import { caliberPrinted } from '../../support/caliber-printed.ts'
import { gaugeTableOf } from '../../support/gauge-table-of.ts'

const table = gaugeTableOf('Brandsma', { 13: 0.125, 14: 0.12, '2/0': 0.27 })
const beside = (fields: Parameters<typeof caliberPrinted>[0]) =>
  gaugeReads(caliberPrinted(fields), [table])?.reads[0]?.beside

test('without a table, or without a printed gauge, nothing is said', () => {
  expect(gaugeReads(caliberPrinted({ springGauge: ['Brandsma 14'] }), [])).toBeNull()
  expect(gaugeReads(caliberPrinted({ springThicknessMm: ['0.12'] }), [table])).toBeNull()
})

test('the size of the table stands beside the stated one within what that may be by its print', () => {
  expect(beside({ springGauge: ['Brandsma 14'] })).toBeNull()
  expect(beside({ springGauge: ['Brandsma 14'], springThicknessMm: ['0.12'] })).toEqual({
    stated: 0.12,
    differenceMm: 0,
    agrees: true,
  })
  // Half of the last digit printed, 0.005 mm, is the edge.
  expect(beside({ springGauge: ['Brandsma 13'], springThicknessMm: ['0.12'] })).toEqual({
    stated: 0.12,
    differenceMm: 0.005,
    agrees: true,
  })
  expect(beside({ springGauge: ['Brandsma 13'], springThicknessMm: ['0.120'] })).toMatchObject({ agrees: false })
  expect(beside({ springGauge: ['Brandsma 14'], springThicknessMm: ['0.13'] })).toEqual({
    stated: 0.13,
    differenceMm: -0.01,
    agrees: false,
  })
  expect(beside({ springGauge: ['Brandsma 14'], springThicknessMm: ['0.11 ±0.01'] })).toMatchObject({ agrees: true })
})

test('what is not looked up comes with its reason and the print', () => {
  expect(gaugeReads(caliberPrinted({ springGauge: ['Slit gauge 14'] }), [table])).toEqual({
    printed: 'Slit gauge 14',
    reads: [],
    doubts: [{ code: 'none-named' }],
  })
})
