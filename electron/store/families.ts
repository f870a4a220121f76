import type { CaliberEntry } from '../../core/exchange/library-file.ts'
import { type Library, rows, run, write } from './library.ts'
import { compact } from './search-keys.ts'
import { storedEntry } from './write-caliber.ts'

export interface StoredCaliber {
  readonly id: number
  readonly entry: CaliberEntry
}

/** The calibers that bear a name as their designation or among their other names, whatever stands between its letters. */
export const calibersNamed = async (library: Library, name: string): Promise<StoredCaliber[]> => {
  const key = compact(name)
  if (key === '') return []
  const ids = library
    .prepare(
      'select id from caliber where designation_compact = ? union select caliber_id from alias where compact = ?',
    )
    .pluck()
    .all(key, key)
  return ids.flatMap((id) => {
    const entry = storedEntry(library, Number(id))
    return entry === null ? [] : [{ id: Number(id), entry }]
  })
}

/** Every caliber that is based on another, with the name of its base. */
export const listVariants = async (library: Library): Promise<{ id: number; basedOn: string }[]> =>
  rows(
    library,
    library.db
      .selectFrom('reading')
      .select(['caliber_id as id', 'word as basedOn'])
      .where('field', '=', 'basedOn')
      .where('word', 'is not', null)
      .where('chosen', '=', 1)
      .orderBy('caliber_id'),
  ).map(({ id, basedOn }) => ({ id, basedOn: basedOn ?? '' }))

/** Sets how many proofs of a caliber fail, where that follows from a change of another; no change of its own. */
export const countProofsAgain = async (
  library: Library,
  counts: readonly { readonly id: number; readonly disagree: number; readonly doubtful: number }[],
): Promise<void> =>
  write(library, () => {
    for (const { id, disagree, doubtful } of counts) {
      run(library, library.db.updateTable('caliber').set({ disagree, doubtful }).where('id', '=', id))
    }
  })
