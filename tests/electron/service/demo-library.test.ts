import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { readDemoLibrary } from '../../../electron/service/demo-library.ts'

const shelf = [{ key: 'hb', title: 'Handbook' }]
const folderOf = (sources: unknown, calibers: Record<string, unknown>): string => {
  const folder = mkdtempSync(join(tmpdir(), 'demo-'))
  mkdirSync(join(folder, 'calibers'))
  writeFileSync(join(folder, 'sources.json'), JSON.stringify(sources))
  writeFileSync(join(folder, 'springs.json'), JSON.stringify([{ supplierRef: 'A1' }]))
  writeFileSync(join(folder, 'gauges.json'), JSON.stringify([{ name: 'Harrow' }]))
  for (const [name, content] of Object.entries(calibers))
    writeFileSync(join(folder, 'calibers', name), JSON.stringify(content))
  return folder
}
const verrin = (designation: string) => ({ maker: 'Verrin', designation })

test('each file is a caliber, in the order of their names, beside the shelf of sources', () => {
  const folder = folderOf(
    { sources: shelf },
    { 'b.json': verrin('2'), 'a.json': verrin('1'), 'notes.txt': 'no caliber' },
  )
  const { lignebook, sources, calibers, springs, gauges } = readDemoLibrary(folder)
  expect([lignebook, sources, springs, gauges]).toEqual([1, shelf, [{ supplierRef: 'A1' }], [{ name: 'Harrow' }]])
  expect(calibers.map(({ designation }) => designation)).toEqual(['1', '2'])
})

test('the shelf may be a bare list', () => {
  expect(readDemoLibrary(folderOf(shelf, {})).sources).toEqual(shelf)
})

test('a file that is no caliber is not passed over', () => {
  expect(() => readDemoLibrary(folderOf(shelf, { 'a.json': { maker: 'Verrin' } }))).toThrow('designation')
})
