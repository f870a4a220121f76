import { expect, test } from 'vitest'
import type { Library } from '../../../electron/store/library.ts'
import { after } from '../../../electron/store/search-keys.ts'
import { searchStatements } from '../../../electron/store/search-statements.ts'
import { entryOf, save, temporaryLibrary } from '../../support/temporary-library.ts'

test('they are made once for a library, and anew for another', async () => {
  const [one, two] = [await temporaryLibrary(), await temporaryLibrary()]
  expect(searchStatements(one)).toBe(searchStatements(one))
  expect(searchStatements(two)).not.toBe(searchStatements(one))
})

test('none of them walks through a whole table or sorts what it found, so that a large library is as quick', async () => {
  const library = await temporaryLibrary()
  const texts: string[] = []
  const listening: Library = {
    ...library,
    prepare: (text) => {
      texts.push(text)
      return library.prepare(text)
    },
  }
  searchStatements(listening)
  expect(texts.length).toBeGreaterThanOrEqual(10)
  for (const text of texts) {
    const holders = Array.from({ length: text.split('?').length - 1 }, () => 1)
    const plan = library.connection.prepare(`explain query plan ${text}`).all(...holders) as { detail: string }[]
    const slow = plan
      .map(({ detail }) => detail)
      .filter((detail) => /^SCAN|TEMP B-TREE/.test(detail) && !/VIRTUAL TABLE INDEX \d+:M/.test(detail))
    expect(slow, text).toEqual([])
  }
})

test('makers are walked through once each, however many calibers they have', async () => {
  const library = await temporaryLibrary()
  for (const maker of ['Verrin', 'Vero', 'Oldotte', 'Verrin & Fils'])
    for (const designation of ['1', '2', '3']) await save(library, entryOf(maker, designation))
  const { firstMaker, nextMaker } = searchStatements(library)
  const met: string[] = []
  for (let at = firstMaker('ver', after('ver')); at !== undefined; at = nextMaker(at, after('ver'))) met.push(at)
  expect(met).toEqual(['vero', 'verrin', 'verrin fils'])
})

test('sizes are met from the one asked for outwards, either way', async () => {
  const library = await temporaryLibrary()
  for (const size of ['23.1', '23.2', '23.3', '23.4', '23.5'])
    await save(library, entryOf('Verrin', size, { diameterMm: `${size} mm`, heightMm: '23.3 mm' }))
  const { sizeUp, sizeDown } = searchStatements(library)
  expect(sizeUp(23.3, 23.45, 9).map((row) => row.designation)).toEqual(['23.3', '23.4'])
  expect(sizeDown(23.3, 23.05, 9).map((row) => row.designation)).toEqual(['23.2', '23.1'])
  expect(sizeDown(23.3, 23.05, 1).map((row) => row.designation)).toEqual(['23.2'])
})

test('the words of a caliber that is not there are none', async () => {
  expect(searchStatements(await temporaryLibrary()).text(7)).toBe('')
})
