import type { CaliberEntry } from '../../core/exchange/library-file.ts'
import { readEntry } from '../../core/record/read-entry.ts'
import { type Library, rows, run, write } from './library.ts'
import { eraseCaliber, storedEntry, writeCaliber } from './write-caliber.ts'

/** A caliber as a revision remembers it. */
export interface Remembered {
  readonly entry: CaliberEntry
  readonly disagree: number
  readonly doubtful: number
}

export interface Change {
  readonly caliberId: number
  readonly before: Remembered | null
  readonly after: Remembered | null
}

export interface RevisionLine {
  readonly id: number
  readonly at: string
  readonly action: string
  readonly takenBack: boolean
}

/** The caliber as it stands, to be remembered; null where there is none. */
export const remember = (library: Library, id: number): Remembered | null => {
  const entry = storedEntry(library, id)
  const counts = library.prepare('select disagree, doubtful from caliber where id = ?').get(id)
  return entry === null ? null : { entry, ...(counts as { disagree: number; doubtful: number }) }
}

/** Opens a revision: from here on, what was taken back before can be looked at but no longer brought back. */
export const beginRevision = (library: Library, action: string): number => {
  run(
    library,
    library.db.updateTable('revision').set({ left_behind: 1 }).where('taken_back', '=', 1).where('left_behind', '=', 0),
  )
  const row = { at: library.now(), action, taken_back: 0, left_behind: 0 }
  return Number(run(library, library.db.insertInto('revision').values(row)).lastInsertRowid)
}

/** Adds a change to an open revision. */
export const noteChange = (library: Library, revisionId: number, position: number, change: Change): void => {
  library
    .prepare('insert into revision_change (revision_id, position, caliber_id, before, after) values (?, ?, ?, ?, ?)')
    .run(revisionId, position, change.caliberId, written(change.before), written(change.after))
}

const written = (state: Remembered | null): string | null => (state === null ? null : JSON.stringify(state))

interface Step {
  readonly id: number
  readonly action: string
}

const lastDone = (library: Library): Step | undefined =>
  rows(
    library,
    library.db
      .selectFrom('revision')
      .select(['id', 'action'])
      .where('taken_back', '=', 0)
      .orderBy('id', 'desc')
      .limit(1),
  )[0]

const firstTakenBack = (library: Library): Step | undefined =>
  rows(
    library,
    library.db
      .selectFrom('revision')
      .select(['id', 'action'])
      .where('taken_back', '=', 1)
      .where('left_behind', '=', 0)
      .orderBy('id')
      .limit(1),
  )[0]

/** What the next undo would take back, as a phrase. */
export const nextUndo = async (library: Library): Promise<string | null> => lastDone(library)?.action ?? null

/** What the next redo would bring back, as a phrase. */
export const nextRedo = async (library: Library): Promise<string | null> => firstTakenBack(library)?.action ?? null

/** Takes the last change back and says which, or null where there is none. */
export const undoLast = async (library: Library): Promise<string | null> => move(library, lastDone, 'before')

/** Brings the last change taken back in again and says which, or null where there is none. */
export const redoLast = async (library: Library): Promise<string | null> => move(library, firstTakenBack, 'after')

const move = (library: Library, find: (library: Library) => Step | undefined, side: 'before' | 'after') =>
  write(library, () => {
    const step = find(library)
    if (step === undefined) return null
    const changes = rows(
      library,
      library.db
        .selectFrom('revision_change')
        .select(['caliber_id', 'before', 'after'])
        .where('revision_id', '=', step.id)
        .orderBy('position', side === 'before' ? 'desc' : 'asc'),
    )
    for (const change of changes) {
      const state = change[side]
      if (state === null) eraseCaliber(library, change.caliber_id)
      else {
        const { entry, disagree, doubtful } = JSON.parse(state) as Remembered
        const values = readEntry(entry).caliber
        writeCaliber(library, change.caliber_id, { entry, values, disagree, doubtful }, { index: true })
      }
    }
    const taken = side === 'before' ? 1 : 0
    run(library, library.db.updateTable('revision').set({ taken_back: taken }).where('id', '=', step.id))
    return step.action
  })

/** The changes made so far, latest first. */
export const listRevisions = async (library: Library, limit: number): Promise<RevisionLine[]> =>
  rows(
    library,
    library.db.selectFrom('revision').select(['id', 'at', 'action', 'taken_back']).orderBy('id', 'desc').limit(limit),
  ).map(({ taken_back, ...line }) => ({ ...line, takenBack: taken_back === 1 }))
