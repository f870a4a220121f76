import type { CaliberRow } from '../../core/api/contract.ts'
import { LignebookError } from '../../core/api/errors.ts'
import type { CaliberEntry, Source } from '../../core/exchange/library-file.ts'
import type { Caliber } from '../../core/record/caliber.ts'
import type { ReadCaliber } from './caliber-rows.ts'
import { type Library, rows, run, write } from './library.ts'
import { beginRevision, noteChange, remember } from './revisions.ts'
import { rebuildWords } from './search-index.ts'
import { shelve } from './sources.ts'
import { eraseCaliber, idOfName, storedEntry, writeCaliber } from './write-caliber.ts'

/** The columns of a line in the list, under the names of the contract. */
export const rowColumns = [
  'id',
  'maker',
  'designation',
  'size_printed as sizePrinted',
  'diameter_mm as diameterMm',
  'beat_rate_vph as beatRateVph',
  'first_year as firstYear',
  'last_year as lastYear',
  'disagree',
  'doubtful',
] as const

/** Above this many at once the word index is made anew rather than kept in step. */
const manyAtOnce = 2000

export interface Saving {
  readonly values: Caliber
  readonly disagree: number
  readonly doubtful: number
  /** What is done, as a phrase: `change of Verrin 17-220`. */
  readonly action: string
}

export interface SavedItem extends ReadCaliber {
  /** The caliber that it replaces; null for a new one. */
  readonly id: number | null
}

export const countCalibers = async (library: Library): Promise<number> =>
  Number(library.prepare('select count(*) from caliber').pluck().get())

/** How many calibers have a proof that disagrees. */
export const countDisagreeing = async (library: Library): Promise<number> =>
  Number(library.prepare('select count(*) from caliber where disagree > 0').pluck().get())

/** A stretch of the list, by maker and designation, numbers within a designation in their order. */
export const pageOfCalibers = async (
  library: Library,
  { offset, limit }: { readonly offset: number; readonly limit: number },
): Promise<CaliberRow[]> =>
  rows(
    library,
    library.db
      .selectFrom('caliber')
      .select(rowColumns)
      // The ids come from the index alone; only the rows shown are fetched.
      .where('id', 'in', (inner) =>
        inner
          .selectFrom('caliber')
          .select('id')
          .orderBy('maker_folded')
          .orderBy('designation_order')
          .orderBy('id')
          .limit(limit)
          .offset(offset),
      )
      .orderBy('maker_folded')
      .orderBy('designation_order')
      .orderBy('id'),
  )

export const readCaliber = async (library: Library, id: number): Promise<CaliberEntry | null> =>
  storedEntry(library, id)

/** The id of the caliber with that maker and designation, whatever their case or marks. */
export const findCaliber = async (library: Library, maker: string, designation: string): Promise<number | null> =>
  idOfName(library, maker, designation)

/**
 * Saves a caliber with its revision, and lets its draft go.
 * @throws LignebookError same-name, not-found, disk-full
 */
export const saveCaliber = async (
  library: Library,
  id: number | null,
  entry: CaliberEntry,
  { values, disagree, doubtful, action }: Saving,
): Promise<number> =>
  write(library, () => {
    const saved = saveAll(library, [{ id, entry, values, disagree, doubtful }], action)
    run(library, library.db.deleteFrom('draft').where('caliber_id', '=', id ?? 0))
    return saved[0] ?? 0
  })

/**
 * Saves many calibers with the sources they come with, and what is done alongside, all or none, as one step that can
 * be taken back. Answers the calibers' ids.
 */
export const saveCalibers = async (
  library: Library,
  items: readonly SavedItem[],
  action: string,
  sources: readonly Source[] = [],
  alongside?: (revision: number) => void,
): Promise<number[]> =>
  items.length + sources.length === 0 && alongside === undefined
    ? []
    : write(library, () => saveAll(library, items, action, sources, alongside))

const saveAll = (
  library: Library,
  items: readonly SavedItem[],
  action: string,
  sources: readonly Source[] = [],
  alongside?: (revision: number) => void,
): number[] => {
  const many = items.length > manyAtOnce
  const revision = beginRevision(library, action)
  // The sources first, so that taking the step back takes them last, when nothing rests on them any more.
  sources.forEach((source, position) => {
    shelve(library, revision, position, source)
  })
  const ids = items.map(({ id, ...caliber }, index) => {
    const before = id === null ? null : remember(library, id)
    if (id !== null && before === null) throw new LignebookError('not-found', { id })
    const caliberId = writeCaliber(library, id, caliber, { index: !many })
    const { entry, disagree, doubtful } = caliber
    noteChange(library, revision, sources.length + index, { caliberId, before, after: { entry, disagree, doubtful } })
    return caliberId
  })
  if (many) rebuildWords(library)
  alongside?.(revision)
  return ids
}

/** Takes a caliber out of the library; the revision can bring it back. */
export const removeCaliber = async (library: Library, id: number): Promise<void> =>
  write(library, () => {
    const before = remember(library, id)
    if (before === null) throw new LignebookError('not-found', { id })
    const revision = beginRevision(library, `removal of ${before.entry.maker} ${before.entry.designation}`)
    noteChange(library, revision, 0, { caliberId: id, before, after: null })
    eraseCaliber(library, id)
    run(library, library.db.deleteFrom('draft').where('caliber_id', '=', id))
  })

/** Every caliber, one after the other, without holding them all. */
export async function* eachCaliber(library: Library): AsyncIterable<{ id: number; entry: CaliberEntry }> {
  let last = 0
  for (;;) {
    const ids = rows(
      library,
      library.db.selectFrom('caliber').select('id').where('id', '>', last).orderBy('id').limit(200),
    )
    if (ids.length === 0) return
    for (const { id } of ids) {
      const entry = storedEntry(library, id)
      if (entry !== null) yield { id, entry }
      last = id
    }
  }
}
