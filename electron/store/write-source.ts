import type { Source } from '../../core/exchange/library-file.ts'
import { type Library, rows, run } from './library.ts'
import type { Tables } from './tables.ts'

/** A source as its row says it, with whatever a newer version wrote beside. */
export const sourceOfRow = (row: Tables['source']): Source => ({
  key: row.key,
  title: row.title,
  ...(row.author === null ? {} : { author: row.author }),
  ...(row.year === null ? {} : { year: row.year }),
  ...(row.edition === null ? {} : { edition: row.edition }),
  ...(row.language === null ? {} : { language: row.language }),
  ...(row.units_as_printed === null ? {} : { unitsAsPrinted: row.units_as_printed }),
  ...(row.notes === null ? {} : { notes: row.notes }),
  ...(JSON.parse(row.extra) as Record<string, unknown>),
})

/** The source of that key, or null. */
export const storedSource = (library: Library, key: string): Source | null => {
  const [row] = rows(library, library.db.selectFrom('source').selectAll().where('key', '=', key))
  return row === undefined ? null : sourceOfRow(row)
}

/** Puts a source on the shelf, in place of the one with its key; within a transaction. */
export const writeSource = (library: Library, source: Source): void => {
  const { key, title, author, year, edition, language, unitsAsPrinted, notes, ...extra } = source
  run(
    library,
    library.db.replaceInto('source').values({
      key,
      title,
      author: author ?? null,
      year: year ?? null,
      edition: edition ?? null,
      language: language ?? null,
      units_as_printed: unitsAsPrinted ?? null,
      notes: notes ?? null,
      extra: JSON.stringify(extra),
    }),
  )
}

/** Takes a source off the shelf; within a transaction. */
export const eraseSource = (library: Library, key: string): void => {
  run(library, library.db.deleteFrom('source').where('key', '=', key))
}
