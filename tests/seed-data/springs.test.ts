import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { readStockSpring } from '../../core/exchange/read-stock-spring.ts'
import { openCaliber } from '../../core/record/entry.ts'
import { readEntry } from '../../core/record/read-entry.ts'
import { rankSprings } from '../../core/springs/rank-springs.ts'
import { demoCalibers, plantedMisprints } from './demo-library.ts'

const lines = JSON.parse(readFileSync('seed-data/springs.json', 'utf8')) as Record<string, unknown>[]
const springs = lines.flatMap((line) => {
  const read = readStockSpring(line)
  return read.ok ? [read.spring] : []
})

it('has springs that can all be read, each number once on its tray', () => {
  expect(springs).toHaveLength(lines.length)
  expect(new Set(springs.map(({ tray, supplierRef }) => `${tray} ${supplierRef}`)).size).toBe(springs.length)
})

it('has the specified spring of every demo caliber that states one, and what is not advised beside it', () => {
  const misprinted = new Set(plantedMisprints.map(({ caliber }) => caliber))
  const verdicts = new Set<string>()
  for (const { file, caliber } of demoCalibers) {
    const { values } = readEntry(openCaliber(caliber)).caliber
    if (values.springHeightMm === undefined || values.springThicknessMm === undefined) continue
    if (misprinted.has(`${caliber.maker} ${caliber.designation}`)) continue
    const { ranked } = rankSprings(values, springs, 20)
    expect(ranked[0]?.verdict, file).toBe('as-specified')
    for (const { verdict } of ranked) verdicts.add(verdict)
  }
  expect(verdicts).toEqual(new Set(['as-specified', 'acceptable', 'not-advised', 'does-not-fit']))
})
