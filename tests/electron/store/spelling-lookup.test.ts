import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Library } from '../../../electron/store/library.ts'
import { editsBetween, isSpelt, slipsIn } from '../../../electron/store/spelling.ts'
import { correctionsOf } from '../../../electron/store/spelling-lookup.ts'
import { madeUpWord } from '../../support/made-up-calibers.ts'
import { entryOf, save, temporaryLibrary } from '../../support/temporary-library.ts'

const words = Array.from({ length: 240 }, (_, at) => madeUpWord(at * 7))
const vocabulary = async (): Promise<Library> => {
  const library = await temporaryLibrary()
  await save(library, entryOf('Verrin', '1', { notes: words.join(' ') }))
  return library
}

/** What a walk through every word would answer. */
const correctionsByWalk = (typed: string): string[] =>
  [...new Set([...words, 'verrin'])]
    .filter(isSpelt)
    .map((word) => ({ word, edits: editsBetween(typed, word) }))
    .filter(({ word, edits }) => edits > 0 && edits <= slipsIn(typed.length > word.length ? typed : word))
    .sort((a, b) => a.edits - b.edits || (a.word < b.word ? -1 : 1))
    .slice(0, 8)
    .map(({ word }) => word)

test('a look-up finds what a walk through every word would find, nearest first', async () => {
  const library = await vocabulary()
  const letter = fc.stringMatching(/^[a-z]$/)
  const near = fc
    .tuple(fc.constantFrom(...words), fc.array(fc.tuple(fc.nat(), fc.nat(2), letter), { maxLength: 2 }))
    .map(([word, slips]) =>
      slips.reduce((text, [place, gone, put]) => {
        const at = place % (text.length + 1)
        return text.slice(0, at) + (gone === 2 ? '' : put) + text.slice(at + (gone === 0 ? 0 : 1))
      }, word),
    )
  fc.assert(
    fc.property(near, (typed) => {
      expect(correctionsOf(library, typed)).toEqual(isSpelt(typed) ? correctionsByWalk(typed) : [])
    }),
    { numRuns: 500 },
  )
})

test('a word that is there as typed is not among its own corrections', async () => {
  const library = await vocabulary()
  for (const word of words.slice(0, 40)) expect(correctionsOf(library, word)).not.toContain(word)
})

test('numbers and short words are not corrected', async () => {
  const library = await temporaryLibrary()
  await save(library, entryOf('Vero', '17-220', { notes: 'abc 17221' }))
  for (const typed of ['17222', 'abd', '', 'ver']) expect(correctionsOf(library, typed)).toEqual([])
  expect(correctionsOf(library, 'verro')).toEqual(['vero'])
})
