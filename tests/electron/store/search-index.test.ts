import fc from 'fast-check'
import { expect, test } from 'vitest'
import { findCaliber, removeCaliber } from '../../../electron/store/calibers.ts'
import { type Library, write } from '../../../electron/store/library.ts'
import { forgetWords, rebuildWords } from '../../../electron/store/search-index.ts'
import { fullEntry } from '../../support/full-entry.ts'
import { checkWordIndex, entryOf, save, temporaryLibrary } from '../../support/temporary-library.ts'

const wordsOfCaliber = (library: Library, id: number): string[] =>
  String(library.connection.prepare('select words from search_text where caliber_id = ?').pluck().get(id)).split(' ')
const holding = ({ connection }: Library, word: string): unknown[] =>
  connection.prepare('select rowid from search_words where search_words = ? order by rowid').pluck().all(`"${word}"`)
const aliases = ({ connection }: Library): unknown[] =>
  connection.prepare('select alias from alias order by alias').pluck().all()

test('name, other names, what it is based on, notes and parts of a caliber are its words, each once and plain', async () => {
  const library = await temporaryLibrary()
  const fields = { alsoKnownAs: 'Tamsor 5, Lune', basedOn: 'Verrin 16', notes: 'Größe, größe; Lune' }
  const id = await save(
    library,
    entryOf('Verrin', '17-220', fields, { parts: [{ part: 'Mainspring', number: 'K-12' }] }),
  )
  expect(wordsOfCaliber(library, id)).toEqual([
    'verrin',
    '17',
    '220',
    'tamsor',
    '5',
    'lune',
    '16',
    'grosse',
    'mainspring',
    'k',
    '12',
    '17220',
    'tamsor5',
  ])
  expect(aliases(library)).toEqual(['Lune', 'Tamsor 5'])
})

test('words of an entry as it was before a change are found no more', async () => {
  const library = await temporaryLibrary()
  const id = await save(library, entryOf('Verrin', '1', { notes: 'first', alsoKnownAs: 'Lune' }))
  await save(library, entryOf('Verrin', '1', { notes: 'second', alsoKnownAs: 'Soleil' }), id)
  expect([holding(library, 'first'), holding(library, 'second')]).toEqual([[], [id]])
  expect(aliases(library)).toEqual(['Soleil'])
})

test('two other names that a search cannot tell apart do not stop a caliber from being saved', async () => {
  const library = await temporaryLibrary()
  await save(library, entryOf('Verrin', '1', { alsoKnownAs: 'T 5, T-5, t5, —' }))
  expect(aliases(library)).toEqual(['T 5'])
})

test('forgetting a caliber that has no words is no fault', async () => {
  const library = await temporaryLibrary()
  write(library, () => forgetWords(library, 42))
  checkWordIndex(library)
})

test('kept in step through any changes, the word index is what it would be if it were made anew', async () => {
  const library = await temporaryLibrary()
  const word = fc.constantFrom('verrin', 'Größe', 'lune', 'mainspring', '17-220', '水', 'x"y')
  const change = fc.record({ name: fc.constantFrom('1', '2', '3'), words: fc.array(word), remove: fc.boolean() })
  const answers = () =>
    ['verrin', 'grosse', 'lune', 'mainspring', '17', '水', 'x', 'y'].map((each) => holding(library, each))
  await fc.assert(
    fc.asyncProperty(fc.array(change, { maxLength: 6 }), async (changes) => {
      for (const { name, words, remove } of changes) {
        const id = await findCaliber(library, 'Maker', name)
        if (remove && id !== null) await removeCaliber(library, id)
        else await save(library, entryOf('Maker', name, { notes: words.join(' ') }), id)
      }
      checkWordIndex(library)
      const kept = answers()
      write(library, () => rebuildWords(library))
      expect(answers()).toEqual(kept)
    }),
    { numRuns: 25 },
  )
})

test('a word stays in the vocabulary once it is learnt, and finds nothing when its caliber is gone', async () => {
  const library = await temporaryLibrary()
  const id = await save(library, fullEntry())
  await removeCaliber(library, id)
  expect(library.connection.prepare("select count(*) from spelling where word = 'verrin'").pluck().get()).not.toBe(0)
  expect(holding(library, 'verrin')).toEqual([])
})
