import type { Source } from '../../core/exchange/library-file.ts'
import { type Library, rows, run, write } from './library.ts'

/** The shelf, with how many readings each source stands behind. */
export const listSources = async (library: Library): Promise<(Source & { values: number })[]> =>
  rows(
    library,
    library.db
      .selectFrom('source')
      .selectAll()
      .select((outer) =>
        outer
          .selectFrom('reading')
          .select((inner) => inner.fn.countAll<number>().as('count'))
          .whereRef('reading.source', '=', 'source.key')
          .as('values'),
      )
      .orderBy('title')
      .orderBy('key'),
  ).map(({ key, title, author, year, edition, language, units_as_printed, notes, extra, values }) => ({
    key,
    title,
    ...(author === null ? {} : { author }),
    ...(year === null ? {} : { year }),
    ...(edition === null ? {} : { edition }),
    ...(language === null ? {} : { language }),
    ...(units_as_printed === null ? {} : { unitsAsPrinted: units_as_printed }),
    ...(notes === null ? {} : { notes }),
    ...(JSON.parse(extra) as Record<string, unknown>),
    values: values ?? 0,
  }))

/** Puts a source on the shelf, in place of the one with its key. */
export const saveSource = async (library: Library, source: Source): Promise<void> =>
  write(library, () => {
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
  })
