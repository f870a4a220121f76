import { isDeepStrictEqual } from 'node:util'
import { LignebookError } from '../../core/api/errors.ts'
import type { Source } from '../../core/exchange/library-file.ts'
import { listKeys, listTables } from './caliber-rows.ts'
import { type Library, rows, write } from './library.ts'
import { beginRevision, noteChange } from './revisions.ts'
import { eraseSource, sourceOfRow, storedSource, writeSource } from './write-source.ts'

/** A caliber of which something rests on a source: the keys of its fields and lists, in the order entered. */
export interface SourceUse {
  readonly caliberId: number
  readonly maker: string
  readonly designation: string
  readonly keys: string[]
}

/** Every reading and every line of a list that names a source. */
const resting = [
  'select source, caliber_id, field as key, position, 0 as list from reading where source is not null',
  ...listKeys.map(
    (key, index) =>
      `select source, caliber_id, '${key}', position, ${index + 1} from ${listTables[key].table} where source is not null`,
  ),
].join(' union all ')

/** The same, with the gauge tables that name one. */
const counted = `select source from (${resting}) union all
  select line ->> 'source' from gauge where line ->> 'source' is not null`

/** The shelf by title, with how many readings, lines and gauge tables each source stands behind. */
export const listSources = async (library: Library): Promise<(Source & { values: number })[]> => {
  const found = library.prepare(`select source, count(*) as count from (${counted}) group by source`).all()
  const counts = new Map((found as { source: string; count: number }[]).map(({ source, count }) => [source, count]))
  return rows(library, library.db.selectFrom('source').selectAll().orderBy('title').orderBy('key')).map((row) => ({
    ...sourceOfRow(row),
    values: counts.get(row.key) ?? 0,
  }))
}

/** The calibers that rest on a source, by name, where `total` counts them all; and the gauge tables taken from it. */
export const usesOfSource = async (
  library: Library,
  key: string,
  limit: number,
): Promise<{ total: number; uses: SourceUse[]; gauges?: string[] }> => {
  const total = library.prepare(`select count(distinct caliber_id) from (${resting}) where source = ?`).pluck().get(key)
  const found = library
    .prepare(
      `with resting as (${resting})
       select id as caliberId, maker, designation,
         (select json_group_array(key) from
           (select key from resting where source = ? and caliber_id = caliber.id group by key order by min(list), min(position))
         ) as keys
       from caliber where id in (select caliber_id from resting where source = ?)
       order by maker_folded, designation_order, id limit ?`,
    )
    .all(key, key, limit) as (Omit<SourceUse, 'keys'> & { keys: string })[]
  const gauges = library
    .prepare("select line ->> 'name' from gauge where line ->> 'source' = ? order by id")
    .pluck()
    .all(key) as string[]
  return {
    total: Number(total),
    uses: found.map((use) => ({ ...use, keys: JSON.parse(use.keys) as string[] })),
    ...(gauges.length === 0 ? {} : { gauges }),
  }
}

/** Puts a source on the shelf, in place of the one with its key, as a step that can be taken back. */
export const saveSource = async (library: Library, source: Source): Promise<void> =>
  write(library, () => {
    const before = storedSource(library, source.key)
    if (isDeepStrictEqual(before, source)) return
    const revision = beginRevision(library, `${before === null ? 'entry' : 'change'} of source ${source.title}`)
    shelve(library, revision, 0, source)
  })

/** Puts a source on the shelf as one change of an open revision; within a transaction. */
export const shelve = (library: Library, revision: number, position: number, source: Source): void => {
  const before = storedSource(library, source.key)
  writeSource(library, source)
  noteChange(library, revision, position, { sourceKey: source.key, before, after: storedSource(library, source.key) })
}

/**
 * Takes a source off the shelf; the revision can bring it back.
 * @throws LignebookError not-found; source-in-use where a saved value rests on it, and then nothing is removed
 */
export const removeSource = async (library: Library, key: string): Promise<void> =>
  write(library, () => {
    const before = storedSource(library, key)
    if (before === null) throw new LignebookError('not-found', { what: 'This source' })
    refuseInUse(library, before)
    const revision = beginRevision(library, `removal of source ${before.title}`)
    noteChange(library, revision, 0, { sourceKey: key, before, after: null })
    eraseSource(library, key)
  })

/** @throws LignebookError source-in-use */
export const refuseInUse = (library: Library, { key, title }: Source): void => {
  const values = library.prepare(`select count(*) from (${counted}) where source = ?`).pluck().get(key)
  if (Number(values) > 0) throw new LignebookError('source-in-use', { title, values: Number(values) })
}
