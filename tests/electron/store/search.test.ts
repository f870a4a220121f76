import fc from 'fast-check'
import { expect, test } from 'vitest'
import { removeCaliber } from '../../../electron/store/calibers.ts'
import { searchCalibers } from '../../../electron/store/search.ts'
import { checkWordIndex, entryOf, save, temporaryLibrary } from '../../support/temporary-library.ts'

const shelf = async () => {
  const library = await temporaryLibrary()
  await save(library, entryOf('Verrin', '17-220', { diameterMm: "17'''", alsoKnownAs: 'Tamsor 5, Lune' }))
  await save(library, entryOf('Verrin', '8.5 B', { diameterMm: '23.30 mm', notes: 'Größe mit Repassage' }))
  await save(library, entryOf('Oldotte & Fils', '172', {}, { parts: [{ part: 'mainspring', number: 'KR-4821/12' }] }))
  return library
}

test.each([
  ['17-220', 'Verrin 17-220', 'designation', '17-220'],
  ['17 220', 'Verrin 17-220', 'designation', '17-220'],
  ['17220', 'Verrin 17-220', 'designation', '17-220'],
  ['85b', 'Verrin 8.5 B', 'designation', '8.5 B'],
  ['oldo', 'Oldotte & Fils 172', 'maker', 'Oldotte & Fils'],
  ['verrin 17', 'Verrin 17-220', 'maker-and-designation', 'Verrin 17-220'],
  ['17220 ver', 'Verrin 17-220', 'maker-and-designation', 'Verrin 17-220'],
  ['oldotte fils 17', 'Oldotte & Fils 172', 'maker-and-designation', 'Oldotte & Fils 172'],
  ['lun', 'Verrin 17-220', 'alias', 'Lune'],
  ['tamsor5', 'Verrin 17-220', 'alias', 'Tamsor 5'],
  ["17'''", 'Verrin 17-220', 'size', "17'''"],
  ['17 lig', 'Verrin 17-220', 'size', "17'''"],
  ['38.35 mm', 'Verrin 17-220', 'size', "17'''"],
  ['23,3 mm', 'Verrin 8.5 B', 'size', '23.30 mm'],
  ['grosse', 'Verrin 8.5 B', 'words', 'Größe'],
  ['größe rep', 'Verrin 8.5 B', 'words', 'Größe Repassage'],
  ['KR-4821', 'Oldotte & Fils 172', 'words', 'KR 4821'],
  ['verin', 'Verrin 17-220', 'spelling', 'Verrin'],
  ['oldtote', 'Oldotte & Fils 172', 'spelling', 'Oldotte'],
  ['repasasge', 'Verrin 8.5 B', 'spelling', 'Repassage'],
])('%s finds %s', async (words, name, code, matched) => {
  const [first] = await searchCalibers(await shelf(), words, 20)
  expect([`${first?.maker} ${first?.designation}`, first?.why]).toEqual([name, { code, matched }])
})

test('each hit stands once and no more are given than asked', async () => {
  const library = await shelf()
  const all = await searchCalibers(library, '17', 20)
  expect(new Set(all.map(({ id }) => id)).size).toBe(all.length)
  expect(await searchCalibers(library, '17', 1)).toHaveLength(1)
})

test('what was removed is found no more', async () => {
  const library = await shelf()
  const [hit] = await searchCalibers(library, '17-220', 1)
  await removeCaliber(library, hit?.id ?? 0)
  for (const words of ['17-220', 'lune', '38.35 mm']) expect(await searchCalibers(library, words, 5)).toEqual([])
  checkWordIndex(library)
})

test('nothing that can be typed is syntax', async () => {
  const library = await shelf()
  const signs = fc.constantFrom(
    '"',
    "'",
    '*',
    'AND',
    'NOT',
    'NEAR(',
    '-',
    ':',
    '^',
    '(',
    '%',
    '\0',
    ';',
    'ver',
    '17',
    "'''",
    '½',
    '\ud800',
  )
  const typed = fc.oneof(
    fc.string({ unit: 'binary' }),
    fc.array(signs, { maxLength: 12 }).map((list) => list.join(' ')),
  )
  await fc.assert(
    fc.asyncProperty(typed, async (words) => Array.isArray(await searchCalibers(library, words, 20))),
    {
      numRuns: 200,
    },
  )
})

test('what was just saved is found by the beginning of its words', async () => {
  const library = await temporaryLibrary()
  const word = fc.stringMatching(/^[a-zà-öø-ž]{1,9}$/u)
  let number = 0
  await fc.assert(
    fc.asyncProperty(word, word, word, fc.nat(), async (maker, note, alias, cut) => {
      number += 1
      const fields = { notes: note, alsoKnownAs: alias }
      const id = await save(library, entryOf(`${maker} ${number}`, `${number}-x`, fields))
      for (const text of [maker, note, alias]) {
        const typed = `${text.slice(0, 1 + (cut % text.length))} ${number}`
        const hits = await searchCalibers(library, typed, 200)
        expect(hits.map((hit) => hit.id)).toContain(id)
      }
    }),
    { numRuns: 60 },
  )
})
