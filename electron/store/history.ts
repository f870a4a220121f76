import { LignebookError } from '../../core/api/errors.ts'
import { takeBackUses } from './attachment-uses.ts'
import { type Library, rows, write } from './library.ts'
import {
  beginRevision,
  type Change,
  changeOfRow,
  noteChange,
  type RevisionLine,
  remember,
  restore,
  revisionColumns,
  revisionLine,
} from './revisions.ts'
import { refuseInUse } from './sources.ts'
import { countStockChanges, type StockChange, stockChangesOf, takeBackStock } from './stock-changes.ts'
import { storedSource } from './write-source.ts'

export interface Revision extends RevisionLine {
  /** How many records it changed; `changes` holds the stretch asked for, calibers and sources first. */
  readonly total: number
  readonly changes: readonly (Change | StockChange)[]
  /** The changes in force that came later and touched the same records, latest first. */
  readonly later: readonly RevisionLine[]
}

/**
 * A revision with a stretch of what it changed, and what stands in the way of taking it back.
 * @throws LignebookError not-found
 */
export const readRevision = async (
  library: Library,
  id: number,
  { offset, limit }: { readonly offset: number; readonly limit: number },
): Promise<Revision> => {
  const records = Number(library.prepare('select count(*) from revision_change where revision_id = ?').pluck().get(id))
  const changes = changesOf(library, id, { offset, limit })
  const stock = stockChangesOf(library, id, { offset: Math.max(0, offset - records), limit: limit - changes.length })
  return {
    ...line(library, id),
    total: records + countStockChanges(library, id),
    changes: [...changes, ...stock],
    later: laterChanges(library, id),
  }
}

/**
 * Takes one change back wherever it stands, as a new step; says what the step is called.
 * @throws LignebookError not-found, already-taken-back; later-changes where a later one touched the same calibers or
 * sources or springs; source-in-use; same-name or same-ref where another has taken the name. Nothing is changed then.
 */
export const takeBackRevision = async (library: Library, id: number): Promise<string> =>
  write(library, () => {
    const { action, takenBack } = line(library, id)
    if (takenBack) throw new LignebookError('already-taken-back', { action })
    const later = laterChanges(library, id).map((change) => change.action)
    if (later.length > 0) throw new LignebookError('later-changes', { action, changes: later })
    const step = `taking back of the ${action}`
    const revision = beginRevision(library, step)
    changesOf(library, id)
      .toReversed()
      .forEach((change, position) => {
        if ('sourceKey' in change) {
          const { sourceKey, before } = change
          const now = storedSource(library, sourceKey)
          if (now !== null && before === null) refuseInUse(library, now)
          noteChange(library, revision, position, { sourceKey, before: now, after: before })
        } else {
          const { caliberId, before } = change
          noteChange(library, revision, position, { caliberId, before: remember(library, caliberId), after: before })
        }
        restore(library, change, 'before')
      })
    takeBackUses(library, id, revision)
    takeBackStock(library, id, revision)
    return step
  })

const line = (library: Library, id: number): RevisionLine => {
  const [row] = rows(library, library.db.selectFrom('revision').select(revisionColumns).where('id', '=', id))
  if (row === undefined) throw new LignebookError('not-found', { what: 'This change' })
  return revisionLine(row)
}

const changesOf = (library: Library, id: number, stretch?: { offset: number; limit: number }): Change[] =>
  rows(
    library,
    library.db
      .selectFrom('revision_change')
      .select(['caliber_id', 'source_key', 'before', 'after'])
      .where('revision_id', '=', id)
      .orderBy('position')
      .limit(stretch?.limit ?? -1)
      .offset(stretch?.offset ?? 0),
  ).map(changeOfRow)

const laterChanges = (library: Library, id: number): RevisionLine[] =>
  rows(
    library,
    library.db
      .selectFrom('revision')
      .select(revisionColumns)
      .where('taken_back', '=', 0)
      .where('id', 'in', (later) =>
        later
          .selectFrom('revision_change as other')
          .select('other.revision_id')
          .where('other.revision_id', '>', id)
          .where((or) =>
            or.or([
              or('other.caliber_id', 'in', (mine) =>
                mine
                  .selectFrom('revision_change')
                  .select('caliber_id')
                  .where('revision_id', '=', id)
                  .where('caliber_id', 'is not', null),
              ),
              or('other.source_key', 'in', (mine) =>
                mine
                  .selectFrom('revision_change')
                  .select('source_key')
                  .where('revision_id', '=', id)
                  .where('source_key', 'is not', null),
              ),
            ]),
          )
          .union(
            later
              .selectFrom('attachment_change as other')
              .select('other.revision_id')
              .where('other.revision_id', '>', id)
              .where('other.use_id', 'in', (mine) =>
                mine.selectFrom('attachment_change').select('use_id').where('revision_id', '=', id),
              ),
          )
          .union(
            later
              .selectFrom('stock_change as other')
              .innerJoin('stock_change as mine', (same) =>
                same.onRef('mine.kind', '=', 'other.kind').onRef('mine.record_id', '=', 'other.record_id'),
              )
              .select('other.revision_id')
              .where('other.revision_id', '>', id)
              .where('mine.revision_id', '=', id),
          ),
      )
      .orderBy('id', 'desc'),
  ).map(revisionLine)
