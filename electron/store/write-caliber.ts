import { LignebookError } from '../../core/api/errors.ts'
import type { CaliberEntry, EntryReading } from '../../core/exchange/library-file.ts'
import type { Overrule } from '../../core/proofs/severity.ts'
import {
  caliberRow,
  listKeys,
  listRows,
  listTables,
  nameOf,
  overruleRows,
  type ReadCaliber,
  readingRows,
} from './caliber-rows.ts'
import { type Library, rows, run } from './library.ts'
import { forgetWords, indexWords } from './search-index.ts'

/** The caliber of that name, or null. */
export const idOfName = (library: Library, maker: string, designation: string): number | null => {
  const name = nameOf(maker, designation)
  const [found] = rows(
    library,
    library.db
      .selectFrom('caliber')
      .select('id')
      .where('maker_folded', '=', name.maker_folded)
      .where('designation_folded', '=', name.designation_folded),
  )
  return found?.id ?? null
}

/** Writes a caliber with its readings, lists and search words, in place of what stood under its id; within a transaction. */
export const writeCaliber = (
  library: Library,
  id: number | null,
  caliber: ReadCaliber,
  { index }: { index: boolean },
): number => {
  const { maker, designation } = caliber.entry
  const holder = idOfName(library, maker, designation)
  if (holder !== null && holder !== id) throw new LignebookError('same-name', { maker, designation, id: holder })
  const at = library.now()
  const row = caliberRow(caliber)
  let caliberId: number
  if (id !== null && exists(library, id)) {
    caliberId = id
    const changed = { ...row, changed_at: at }
    run(library, library.db.updateTable('caliber').set(changed).where('id', '=', id))
    for (const table of childTables) removeFrom(library, table, id)
  } else {
    // The id is given back to a caliber whose removal is taken back.
    const added = { ...(id === null ? {} : { id }), ...row, created_at: at, changed_at: at }
    caliberId = Number(insert(library, 'caliber', added).lastInsertRowid)
  }
  for (const reading of readingRows(caliber)) insert(library, 'reading', { caliber_id: caliberId, ...reading })
  for (const key of listKeys) {
    for (const line of listRows(caliber, key)) {
      insert(library, listTables[key].table, { caliber_id: caliberId, ...line })
    }
  }
  for (const overrule of overruleRows(caliber.entry))
    insert(library, 'overrule', { caliber_id: caliberId, ...overrule })
  indexWords(library, caliberId, caliber, { index })
  return caliberId
}

/** Takes a caliber out, with all that belongs to it; within a transaction. */
export const eraseCaliber = (library: Library, id: number): void => {
  forgetWords(library, id)
  run(library, library.db.deleteFrom('caliber').where('id', '=', id))
}

/** The entry as it was saved, or null. */
export const storedEntry = (library: Library, id: number): CaliberEntry | null => {
  const caliber = library.prepare('select maker, designation, extra from caliber where id = ?').get(id)
  if (caliber === undefined) return null
  const { maker, designation, extra } = caliber as { maker: string; designation: string; extra: string }
  const fields: Record<string, EntryReading[]> = {}
  const readings = rows(
    library,
    library.db
      .selectFrom('reading')
      .select(['field', 'printed', 'source', 'page', 'note', 'extra'])
      .where('caliber_id', '=', id)
      .orderBy('position'),
  )
  for (const { field, printed, source, page, note, extra: more } of readings) {
    const reading: EntryReading = {
      printed,
      ...(source === null ? {} : { source }),
      ...(page === null ? {} : { page }),
      ...(note === null ? {} : { note }),
      ...(more === null ? {} : (JSON.parse(more) as Record<string, unknown>)),
    }
    const already = Object.hasOwn(fields, field) ? fields[field] : undefined
    if (already) already.push(reading)
    else fields[field] = [reading]
  }
  const lines = (key: keyof typeof listTables): Record<string, unknown>[] =>
    library
      .prepare(`select line from ${listTables[key].table} where caliber_id = ? order by position`)
      .pluck()
      .all(id)
      .map((line) => JSON.parse(String(line)) as Record<string, unknown>)
  const overrules = storedOverrules(library, id)
  return {
    maker,
    designation,
    fields,
    jewels: lines('jewels'),
    lubrication: lines('lubrication'),
    depths: lines('depths'),
    parts: lines('parts'),
    stripOrder: lines('stripOrder'),
    ...(overrules.length > 0 && { overrules }),
    ...(JSON.parse(extra) as Record<string, unknown>),
  }
}

const storedOverrules = (library: Library, id: number): Overrule[] =>
  rows(
    library,
    library.db
      .selectFrom('overrule')
      .select(['proof', 'severity', 'reason', 'outcome as of', 'extra'])
      .where('caliber_id', '=', id)
      .orderBy('position'),
  ).map(({ extra, ...overrule }) => ({ ...overrule, ...(JSON.parse(extra) as Record<string, unknown>) }))

const childTables = ['reading', 'overrule', ...listKeys.map((key) => listTables[key].table)] as const

const removeFrom = (library: Library, table: (typeof childTables)[number], id: number): void => {
  library.prepare(`delete from ${table} where caliber_id = ?`).run(id)
}

const exists = (library: Library, id: number): boolean =>
  library.prepare('select 1 from caliber where id = ?').get(id) !== undefined

/** Inserts a row; the names are those of our own tables, never of an entry. */
const insert = (library: Library, table: string, row: Readonly<Record<string, number | string | null>>) => {
  const columns = Object.keys(row)
  const text = `insert into ${table} (${columns.join(', ')}) values (${columns.map(() => '?').join(', ')})`
  return library.prepare(text).run(...Object.values(row))
}
