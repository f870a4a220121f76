import type { ReadCaliber } from './caliber-rows.ts'
import { type Library, run } from './library.ts'
import { compact, wordsOf } from './search-keys.ts'
import { deletionsOf, isSpelt } from './spelling.ts'

/** Puts a caliber's words where the search finds them; `index: false` leaves the word index to `rebuildWords`. */
export const indexWords = (
  library: Library,
  id: number,
  { entry, values }: ReadCaliber,
  { index }: { index: boolean },
): void => {
  forgetWords(library, id, { index })
  const aliases = values.values.alsoKnownAs ?? []
  const { basedOn, notes } = values.values
  const parts = entry.parts.flatMap(({ part, number }) => [part, number])
  const text = [entry.maker, entry.designation, ...aliases, basedOn, notes, ...parts]
    .filter((piece) => typeof piece === 'string' && piece !== '')
    .join(' · ')
  const words = [...new Set([...wordsOf(text), compact(entry.designation), ...aliases.map(compact)])].filter(Boolean)
  const written = words.join(' ')
  library.prepare('insert into search_text (caliber_id, text, words) values (?, ?, ?)').run(id, text, written)
  if (index) library.prepare('insert into search_words (rowid, words) values (?, ?)').run(id, written)
  for (const alias of aliases) {
    const key = compact(alias)
    if (key !== '') library.prepare('insert or ignore into alias values (?, ?, ?)').run(id, key, alias)
  }
  for (const word of words) if (isSpelt(word)) learn(library, word)
}

/** Takes a caliber's words out of the index. A word stays in the vocabulary: at worst it is tried and finds nothing. */
export const forgetWords = (library: Library, id: number, { index } = { index: true }): void => {
  const words = library.prepare('select words from search_text where caliber_id = ?').pluck().get(id)
  if (words === undefined) return
  if (index) {
    library.prepare("insert into search_words (search_words, rowid, words) values ('delete', ?, ?)").run(id, words)
  }
  run(library, library.db.deleteFrom('search_text').where('caliber_id', '=', id))
  run(library, library.db.deleteFrom('alias').where('caliber_id', '=', id))
}

/** Makes the word index anew from the stored words: four times as fast as keeping it in step when many calibers come in. */
export const rebuildWords = (library: Library): void => {
  library.prepare("insert into search_words (search_words) values ('rebuild')").run()
}

const learn = (library: Library, word: string): void => {
  if (library.prepare('select 1 from spelling where deleted = ? and word = ?').get(word, word)) return
  for (const deleted of deletionsOf(word)) {
    library.prepare('insert or ignore into spelling values (?, ?)').run(deleted, word)
  }
}
