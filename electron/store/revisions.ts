import type { Selectable } from 'kysely'
import type { CaliberEntry, Source } from '../../core/exchange/library-file.ts'
import { readEntry } from '../../core/record/read-entry.ts'
import { moveUses } from './attachment-uses.ts'
import { type Library, rows, run, write } from './library.ts'
import { moveStock } from './stock-changes.ts'
import type { Tables } from './tables.ts'
import { eraseCaliber, storedEntry, writeCaliber } from './write-caliber.ts'
import { eraseSource, writeSource } from './write-source.ts'

/** A caliber as a revision remembers it. */
export interface Remembered {
  readonly entry: CaliberEntry
  readonly disagree: number
  readonly doubtful: number
}

interface CaliberChange {
  readonly caliberId: number
  readonly before: Remembered | null
  readonly after: Remembered | null
}
interface SourceChange {
  readonly sourceKey: string
  readonly before: Source | null
  readonly after: Source | null
}
/** What one step did to one caliber or one source: null where there was none, or is none any more. */
export type Change = CaliberChange | SourceChange

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
    .prepare(
      'insert into revision_change (revision_id, position, caliber_id, source_key, before, after) values (?, ?, ?, ?, ?, ?)',
    )
    .run(
      revisionId,
      position,
      'caliberId' in change ? change.caliberId : null,
      'sourceKey' in change ? change.sourceKey : null,
      written(change.before),
      written(change.after),
    )
}

const written = (state: Remembered | Source | null): string | null => (state === null ? null : JSON.stringify(state))

/** A change as its row remembers it. */
export const changeOfRow = (
  row: Pick<Tables['revision_change'], 'caliber_id' | 'source_key' | 'before' | 'after'>,
): Change => {
  const read = <T>(state: string | null): T | null => (state === null ? null : (JSON.parse(state) as T))
  return row.caliber_id === null
    ? { sourceKey: row.source_key ?? '', before: read<Source>(row.before), after: read<Source>(row.after) }
    : { caliberId: row.caliber_id, before: read<Remembered>(row.before), after: read<Remembered>(row.after) }
}

/** Brings the caliber or source of a change back to how it stood on one side of it; within a transaction. */
export const restore = (library: Library, change: Change, side: 'before' | 'after'): void => {
  if ('sourceKey' in change) {
    const source = change[side]
    if (source === null) eraseSource(library, change.sourceKey)
    else writeSource(library, source)
    return
  }
  const state = change[side]
  if (state === null) eraseCaliber(library, change.caliberId)
  else {
    const values = readEntry(state.entry).caliber
    writeCaliber(library, change.caliberId, { ...state, values }, { index: true })
  }
}

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
        .select(['caliber_id', 'source_key', 'before', 'after'])
        .where('revision_id', '=', step.id)
        .orderBy('position', side === 'before' ? 'desc' : 'asc'),
    )
    for (const change of changes) restore(library, changeOfRow(change), side)
    moveUses(library, step.id, side)
    moveStock(library, step.id, side)
    const taken = side === 'before' ? 1 : 0
    run(library, library.db.updateTable('revision').set({ taken_back: taken }).where('id', '=', step.id))
    return step.action
  })

/** The changes made so far, latest first; with `before`, those older than that one. */
export const listRevisions = async (library: Library, limit: number, before?: number): Promise<RevisionLine[]> =>
  rows(
    library,
    library.db
      .selectFrom('revision')
      .select(revisionColumns)
      .$if(before !== undefined, (query) => query.where('id', '<', before ?? 0))
      .orderBy('id', 'desc')
      .limit(limit),
  ).map(revisionLine)

export const revisionColumns = ['id', 'at', 'action', 'taken_back'] as const

export const revisionLine = (
  row: Pick<Selectable<Tables['revision']>, (typeof revisionColumns)[number]>,
): RevisionLine => ({
  id: row.id,
  at: row.at,
  action: row.action,
  takenBack: row.taken_back === 1,
})
