import type { Compilable } from 'kysely'
import type { CaliberRow } from '../../core/api/contract.ts'
import { rowColumns } from './calibers.ts'
import type { Library } from './library.ts'

const made = new WeakMap<Library, SearchStatements>()

/** The statements of the search, compiled and prepared once for each library. */
export const searchStatements = (library: Library): SearchStatements => {
  const known = made.get(library)
  if (known) return known
  const statements = make(library)
  made.set(library, statements)
  return statements
}

export type SearchStatements = ReturnType<typeof make>

const make = (library: Library) => {
  const { db } = library
  // Built with stand-in values: only the text is kept, and its parameters come in the order written here.
  const prepared = <R>(query: Compilable<R>) => {
    const statement = library.prepare(query.compile().sql)
    return (...parameters: readonly (string | number)[]): R[] => statement.all(...parameters) as R[]
  }
  const first = (query: Compilable<{ maker_folded: string }>) => {
    const all = prepared(query)
    return (...parameters: readonly string[]): string | undefined => all(...parameters, 1)[0]?.maker_folded
  }
  const list = db.selectFrom('caliber').select(rowColumns.map((column) => `caliber.${column}` as const))
  const makers = db.selectFrom('caliber').select('maker_folded')

  const designation = prepared<CaliberRow>(
    list
      .where('designation_compact', '>=', '')
      .where('designation_compact', '<', '')
      .orderBy('designation_compact')
      .limit(1),
  )
  const maker = prepared<CaliberRow>(
    list
      .where('maker_folded', '>=', '')
      .where('maker_folded', '<', '')
      .orderBy('maker_folded')
      .orderBy('designation_order')
      .limit(1),
  )
  const makerAndDesignation = prepared<CaliberRow>(
    list
      .where('maker_folded', '=', '')
      .where('designation_compact', '>=', '')
      .where('designation_compact', '<', '')
      .orderBy('designation_compact')
      .limit(1),
  )
  const alias = prepared<CaliberRow & { alias: string }>(
    list
      .innerJoin('alias', 'alias.caliber_id', 'caliber.id')
      .select('alias')
      .where('alias.compact', '>=', '')
      .where('alias.compact', '<', '')
      .orderBy('alias.compact')
      .limit(1),
  )
  const sized = db
    .selectFrom('reading')
    .innerJoin('caliber', 'caliber.id', 'reading.caliber_id')
    .select(rowColumns.map((column) => `caliber.${column}` as const))
    .where('field', '=', 'diameterMm')
    .where('number', 'is not', null)
  const sizeUp = prepared<CaliberRow>(
    sized.where('number', '>=', 0).where('number', '<=', 0).orderBy('number').limit(1),
  )
  const sizeDown = prepared<CaliberRow>(
    sized.where('number', '<', 0).where('number', '>=', 0).orderBy('number', 'desc').limit(1),
  )
  const words = prepared<CaliberRow>(
    db
      .selectFrom('search_words')
      .innerJoin('caliber', 'caliber.id', 'search_words.rowid')
      .select(rowColumns.map((column) => `caliber.${column}` as const))
      .where('search_words', '=', '')
      .limit(1),
  )
  const text = library.prepare('select text from search_text where caliber_id = ?').pluck()

  return {
    designation,
    maker,
    makerAndDesignation,
    alias,
    sizeUp: (from: number, to: number, limit: number) => sizeUp('diameterMm', from, to, limit),
    sizeDown: (from: number, to: number, limit: number) => sizeDown('diameterMm', from, to, limit),
    words,
    /** The first maker in the range, and the next one after it: makers without reading all their calibers. */
    firstMaker: first(
      makers.where('maker_folded', '>=', '').where('maker_folded', '<', '').orderBy('maker_folded').limit(1),
    ),
    nextMaker: first(
      makers.where('maker_folded', '>', '').where('maker_folded', '<', '').orderBy('maker_folded').limit(1),
    ),
    text: (id: number): string => String(text.get(id) ?? ''),
  }
}
