import type { Draft } from '../../core/api/contract.ts'
import type { CaliberEntry } from '../../core/exchange/library-file.ts'
import { type Library, rows, run, write } from './library.ts'

/** The draft kept last, so that what was being typed outlives a crash; null where nothing is unsaved. */
export const readDraft = async (library: Library): Promise<Draft | null> => latest(library)

const latest = (library: Library): Draft | null => {
  const [found] = rows(
    library,
    library.db
      .selectFrom('draft')
      .select(['caliber_id', 'entry'])
      .orderBy('kept_at', 'desc')
      .orderBy('caliber_id', 'desc')
      .limit(1),
  )
  if (found === undefined) return null
  return { caliberId: found.caliber_id || null, entry: JSON.parse(found.entry) as CaliberEntry }
}

/** Keeps what is being typed: one draft a caliber, and one for the caliber that is new. */
export const keepDraft = async (library: Library, { caliberId, entry }: Draft): Promise<void> =>
  write(library, () => {
    const row = { caliber_id: caliberId ?? 0, entry: JSON.stringify(entry), kept_at: library.now() }
    run(library, library.db.replaceInto('draft').values(row))
  })

/** Lets the draft go that `readDraft` gives. */
export const discardDraft = async (library: Library): Promise<void> =>
  write(library, () => {
    const draft = latest(library)
    if (draft !== null) run(library, library.db.deleteFrom('draft').where('caliber_id', '=', draft.caliberId ?? 0))
  })
