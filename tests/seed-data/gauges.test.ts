import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { readGaugeTable } from '../../core/exchange/read-gauge-table.ts'
import { openCaliber } from '../../core/record/entry.ts'
import { readEntry } from '../../core/record/read-entry.ts'
import { gaugeReads } from '../../core/springs/gauge-reads.ts'
import { demoCalibers, demoSources } from './demo-library.ts'

const written = JSON.parse(readFileSync('seed-data/gauges.json', 'utf8')) as unknown[]
const tables = written.flatMap((each) => {
  const read = readGaugeTable(each)
  return read.ok ? [read.table] : []
})
const found = demoCalibers.flatMap(({ caliber }) => gaugeReads(readEntry(openCaliber(caliber)).caliber, tables) ?? [])

it('has gauge tables that can be read, each with a source on the shelf', () => {
  expect(tables).toHaveLength(written.length)
  const shelf = new Set(demoSources.map(({ key }) => key))
  for (const { source = '' } of tables) expect(shelf).toContain(source)
})

it('has gauge numbers that agree with the stated thickness by them, and one of a gauge without a table', () => {
  const reads = found.flatMap((each) => each.reads)
  expect(reads).toHaveLength(2)
  for (const { beside } of reads) expect(beside).toMatchObject({ agrees: true, differenceMm: 0 })
  expect(found.flatMap(({ doubts }) => doubts)).toEqual([{ code: 'none-named' }])
})
