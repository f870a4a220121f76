import { LignebookError } from '../../core/api/errors.ts'
import { type AttachmentType, attachmentLimits } from '../../core/record/attachment-kind.ts'
import { eraseUse, noteUseChange, type StoredUse, useById, writeUse } from './attachment-uses.ts'
import { type Library, rows, run, write } from './library.ts'
import { beginRevision } from './revisions.ts'

/** A picture or scan with its bytes. */
export interface StoredAttachment {
  readonly sha256: string
  readonly type: AttachmentType
  readonly name: string
  readonly bytes: Buffer
  /** What only a newer version knows of it, as JSON. */
  readonly extra: string
}

/** Where a picture or scan stands: at a caliber, or at a page of a source. */
export type Place =
  | { readonly caliberId: number; readonly page?: string | undefined }
  | { readonly source: string; readonly page?: string | undefined }

/** A picture or scan as it stands in a list, without its bytes. */
export interface AttachmentLine extends Omit<StoredUse, 'extra'> {
  readonly name: string
  readonly type: AttachmentType
  readonly size: number
}

const lines = (library: Library) =>
  library.db
    .selectFrom('attachment_use as use')
    .innerJoin('attachment', 'attachment.sha256', 'use.sha256')
    .select(['use.id', 'use.sha256', 'caliber_id as caliberId', 'source', 'page', 'position', 'note'])
    .select(['name', 'type', 'size'])
    .orderBy('position')
    .orderBy('use.id')

/** What stands at a caliber, and after it what stands at a source, each in its order. */
export const listAttachments = async (
  library: Library,
  { caliberId, source }: { readonly caliberId?: number | undefined; readonly source?: string | undefined },
): Promise<AttachmentLine[]> => [
  ...(caliberId === undefined ? [] : rows(library, lines(library).where('caliber_id', '=', caliberId))),
  ...(source === undefined ? [] : rows(library, lines(library).where('source', '=', source))),
]

/** A picture or scan with its bytes, or null. */
export const readAttachment = async (library: Library, sha256: string): Promise<StoredAttachment | null> =>
  rows(
    library,
    library.db
      .selectFrom('attachment')
      .select(['sha256', 'type', 'name', 'bytes', 'extra'])
      .where('sha256', '=', sha256),
  )[0] ?? null

/**
 * Puts a picture or scan at a caliber or source, as a step that can be taken back. The same bytes are kept once, under
 * their first name, and stand at one place once.
 * @throws LignebookError not-found, attachment-refused where the place has as many as it may
 */
export const addAttachment = async (
  library: Library,
  attachment: StoredAttachment,
  place: Place,
): Promise<{ useId: number; kept: 'now' | 'before' }> =>
  write(library, () => {
    const { sha256, name } = attachment
    const title = titleOf(library, place)
    const page = place.page ?? null
    const there = rows(library, usesAt(library, place))
    const same = there.find((use) => use.sha256 === sha256 && use.page === page)
    if (same) return { useId: same.id, kept: 'before' }
    const onCaliber = 'caliberId' in place
    if (there.length >= (onCaliber ? attachmentLimits.perCaliber : attachmentLimits.perSource)) {
      const fault = onCaliber ? 'too-many-on-caliber' : 'too-many-on-source'
      throw new LignebookError('attachment-refused', { name, fault })
    }
    const kept = keepBytes(library, attachment)
    const revision = beginRevision(library, `attachment of ${name} to ${title}`)
    const use = writeUse(library, {
      id: null,
      sha256,
      caliberId: onCaliber ? place.caliberId : null,
      source: onCaliber ? null : place.source,
      page,
      position: Math.max(-1, ...there.map(({ position }) => position)) + 1,
      note: null,
      extra: '{}',
    })
    noteUseChange(library, revision, 0, { before: null, after: use })
    letGoUnneeded(library)
    return { useId: use.id, kept }
  })

/**
 * Takes a picture or scan away from its place, as a step that can be taken back; its bytes stay as long as that holds.
 * @throws LignebookError not-found
 */
export const removeAttachment = async (library: Library, useId: number): Promise<void> =>
  write(library, () => {
    const use = useById(library, useId)
    if (use === null) throw new LignebookError('not-found', { what: 'This picture or scan' })
    const name = String(library.prepare('select name from attachment where sha256 = ?').pluck().get(use.sha256))
    const revision = beginRevision(library, `removal of ${name} from ${titleOf(library, placeOf(use))}`)
    eraseUse(library, useId)
    noteUseChange(library, revision, 0, { before: use, after: null })
    letGoUnneeded(library)
  })

/** Keeps bytes under their SHA-256, where they are not kept yet; within a transaction. */
export const keepBytes = (library: Library, { bytes, ...attachment }: StoredAttachment): 'now' | 'before' => {
  const row = { ...attachment, bytes, size: bytes.length, added_at: library.now() }
  const { changes } = run(
    library,
    library.db
      .insertInto('attachment')
      .values(row)
      .onConflict((on) => on.doNothing()),
  )
  return changes === 1 ? 'now' : 'before'
}

/** Lets go of bytes that stand nowhere and that neither undo nor redo can bring back; within a transaction. */
const letGoUnneeded = (library: Library): void => {
  library
    .prepare(
      `delete from attachment
       where not exists (select 1 from attachment_use as use where use.sha256 = attachment.sha256)
       and not exists (
         select 1 from attachment_change as change join revision on revision.id = change.revision_id
         where change.sha256 = attachment.sha256 and revision.left_behind = 0
       )`,
    )
    .run()
}

/** What stands at a place, as a query. */
export const usesAt = (library: Library, place: Place) => {
  const uses = library.db.selectFrom('attachment_use').select(['id', 'sha256', 'page', 'position'])
  return 'caliberId' in place ? uses.where('caliber_id', '=', place.caliberId) : uses.where('source', '=', place.source)
}

const placeOf = ({ caliberId, source }: StoredUse): Place =>
  caliberId === null ? { source: source ?? '' } : { caliberId }

const titleOf = (library: Library, place: Place): string => {
  const title =
    'caliberId' in place
      ? library.prepare("select maker || ' ' || designation from caliber where id = ?").pluck().get(place.caliberId)
      : library.prepare('select title from source where key = ?').pluck().get(place.source)
  if (typeof title === 'string') return title
  throw new LignebookError('not-found', { what: 'caliberId' in place ? 'This caliber' : 'This source' })
}
