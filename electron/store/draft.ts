import type { Draft } from '../../core/api/contract.ts'
import type { CaliberEntry } from '../../core/exchange/library-file.ts'
import { type Library, rows, run, write } from './library.ts'

/** A new caliber's draft stands under nought. */
const row = (caliberId: number | null): number => caliberId ?? 0

/** What was being typed of a caliber, so that it outlives a crash; null where nothing is unsaved. */
export const readDraft = async (library: Library, caliberId: number | null): Promise<Draft | null> => {
  const [found] = rows(library, library.db.selectFrom('draft').select('entry').where('caliber_id', '=', row(caliberId)))
  return found === undefined ? null : { caliberId, entry: JSON.parse(found.entry) as CaliberEntry }
}

/** Of which caliber the draft kept last is; null where nothing is unsaved. */
export const latestDraft = async (library: Library): Promise<Pick<Draft, 'caliberId'> | null> => {
  const [found] = rows(
    library,
    library.db
      .selectFrom('draft')
      .select('caliber_id')
      .orderBy('kept_at', 'desc')
      .orderBy('caliber_id', 'desc')
      .limit(1),
  )
  return found === undefined ? null : { caliberId: found.caliber_id || null }
}

/** Keeps what is being typed: one draft a caliber, and one for the caliber that is new. */
export const keepDraft = async (library: Library, { caliberId, entry }: Draft): Promise<void> =>
  write(library, () => {
    const draft = { caliber_id: row(caliberId), entry: JSON.stringify(entry), kept_at: library.now() }
    run(library, library.db.replaceInto('draft').values(draft))
  })

/** Lets the draft of a caliber go. */
export const discardDraft = async (library: Library, caliberId: number | null): Promise<void> =>
  write(library, () => {
    run(library, library.db.deleteFrom('draft').where('caliber_id', '=', row(caliberId)))
  })
