import { type Library, rows, run } from './library.ts'

/** That a picture or scan stands at a caliber or at a source. */
export interface StoredUse {
  readonly id: number
  readonly sha256: string
  readonly caliberId: number | null
  readonly source: string | null
  /** The printed page; of a PDF, that of its first page. */
  readonly page: string | null
  readonly position: number
  readonly note: string | null
  /** What only a newer version knows of it, as JSON. */
  readonly extra: string
}

interface UseChange {
  readonly before: StoredUse | null
  readonly after: StoredUse | null
}

const columns = ['id', 'sha256', 'caliber_id as caliberId', 'source', 'page', 'position', 'note', 'extra'] as const

/** A use as it is stored, or null. */
export const useById = (library: Library, id: number): StoredUse | null =>
  rows(library, library.db.selectFrom('attachment_use').select(columns).where('id', '=', id))[0] ?? null

/** Writes a use, a new one under an id that was never given before; within a transaction. */
export const writeUse = (
  library: Library,
  { id, caliberId, ...use }: Omit<StoredUse, 'id'> & { readonly id: number | null },
): StoredUse => {
  const row = { ...use, caliber_id: caliberId, ...(id === null ? {} : { id }) }
  const { lastInsertRowid } = run(library, library.db.replaceInto('attachment_use').values(row))
  return { ...use, caliberId, id: id ?? Number(lastInsertRowid) }
}

/** Takes a use away; within a transaction. */
export const eraseUse = (library: Library, id: number): void => {
  run(library, library.db.deleteFrom('attachment_use').where('id', '=', id))
}

/** Adds what was done with a use to an open revision. */
export const noteUseChange = (
  library: Library,
  revisionId: number,
  position: number,
  { before, after }: UseChange,
): void => {
  const use = after ?? before
  if (use === null) return
  const row = { revision_id: revisionId, position, use_id: use.id, sha256: use.sha256 }
  const states = { before: before && JSON.stringify(before), after: after && JSON.stringify(after) }
  run(library, library.db.insertInto('attachment_change').values({ ...row, ...states }))
}

/** Brings the uses that a revision changed to how they were before or after it; within a transaction. */
export const moveUses = (library: Library, revisionId: number, side: 'before' | 'after'): void => {
  const changes = rows(
    library,
    library.db
      .selectFrom('attachment_change')
      .select(['use_id', 'before', 'after'])
      .where('revision_id', '=', revisionId)
      .orderBy('position', side === 'before' ? 'desc' : 'asc'),
  )
  for (const change of changes) {
    const state = change[side]
    if (state === null) eraseUse(library, change.use_id)
    else writeUse(library, JSON.parse(state) as StoredUse)
  }
}

/** Takes back what one revision did with uses, as changes of another; within a transaction. */
export const takeBackUses = (library: Library, revisionId: number, into: number): void => {
  const changes = rows(
    library,
    library.db
      .selectFrom('attachment_change')
      .select(['use_id', 'before'])
      .where('revision_id', '=', revisionId)
      .orderBy('position', 'desc'),
  )
  changes.forEach(({ use_id, before }, position) => {
    const now = useById(library, use_id)
    const back = before === null ? null : (JSON.parse(before) as StoredUse)
    noteUseChange(library, into, position, { before: now, after: back })
  })
  moveUses(library, revisionId, 'before')
}
