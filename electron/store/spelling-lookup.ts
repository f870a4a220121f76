import type { Library } from './library.ts'
import { deletionsOf, editsBetween, isSpelt, slipsIn } from './spelling.ts'

const mostCorrections = 8

/** Words of the library that a typed word may have been meant for, nearest first. */
export const correctionsOf = (library: Library, typed: string): string[] => {
  if (!isSpelt(typed)) return []
  const lookUp = library
    .prepare('select word from spelling where deleted in (select value from json_each(?)) limit 1000')
    .pluck()
  const candidates = new Set(lookUp.all(JSON.stringify(deletionsOf(typed))) as string[])
  return [...candidates]
    .map((word) => ({ word, edits: editsBetween(typed, word) }))
    .filter(({ word, edits }) => edits > 0 && edits <= slipsIn(typed.length > word.length ? typed : word))
    .sort((a, b) => a.edits - b.edits || (a.word < b.word ? -1 : 1))
    .slice(0, mostCorrections)
    .map(({ word }) => word)
}
