import { noteUseChange, type StoredUse, writeUse } from './attachment-uses.ts'
import { keepBytes, type Place, type StoredAttachment, usesAt } from './attachments.ts'
import { type Library, rows } from './library.ts'
import { idOfName } from './write-caliber.ts'

/** A use by the names of its place, which are the same in every library. */
export interface PlacedUse extends Omit<StoredUse, 'id' | 'caliberId'> {
  readonly maker: string | null
  readonly designation: string | null
}

/** Every picture and scan that stands somewhere, by its SHA-256, with where; or those of one caliber. */
export const allAttachments = async (
  library: Library,
  caliberId: number | undefined,
): Promise<ReadonlyMap<string, readonly PlacedUse[]>> => {
  const uses = rows(
    library,
    library.db
      .selectFrom('attachment_use as use')
      .leftJoin('caliber', 'caliber.id', 'use.caliber_id')
      .leftJoin('source', 'source.key', 'use.source')
      .select(['use.sha256', 'maker', 'designation', 'use.source', 'page', 'position', 'note', 'use.extra'])
      // What waits for a caliber or source that was taken out is no part of the library now.
      .where((is) => is.or([is('caliber.id', 'is not', null), is('source.key', 'is not', null)]))
      .$if(caliberId !== undefined, (query) => query.where('caliber_id', '=', caliberId ?? 0))
      .orderBy('use.sha256')
      .orderBy('use.source')
      .orderBy('maker')
      .orderBy('designation')
      .orderBy('position')
      .orderBy('page'),
  )
  return Map.groupBy(uses, ({ sha256 }) => sha256)
}

/** Where a picture or scan of a file stands. */
export type IncomingUse = ({ readonly maker: string; readonly designation: string } | { readonly source: string }) & {
  readonly page: string | null
  readonly position: number | null
  readonly note: string | null
  readonly extra: string
}

export interface IncomingAttachment extends StoredAttachment {
  readonly uses: readonly IncomingUse[]
}

const placeNamed = (library: Library, use: IncomingUse): Place | null => {
  if ('source' in use) {
    const found = library.prepare('select 1 from source where key = ?').get(use.source)
    return found === undefined ? null : { source: use.source }
  }
  const caliberId = idOfName(library, use.maker, use.designation)
  return caliberId === null ? null : { caliberId }
}

/** Whether a picture or scan stands at the place already, not yet, or the place is not in the library. */
export const isAttached = (library: Library, sha256: string, use: IncomingUse): 'there' | 'not-yet' | 'nowhere' => {
  const place = placeNamed(library, use)
  if (place === null) return 'nowhere'
  const same = rows(library, usesAt(library, place)).some((there) => there.sha256 === sha256 && there.page === use.page)
  return same ? 'there' : 'not-yet'
}

/** Brings the pictures and scans of a file in, as part of an open revision; within its transaction. */
export const bringInAttachments = (
  library: Library,
  revision: number,
  attachments: readonly IncomingAttachment[],
): void => {
  let change = 0
  for (const { uses, ...attachment } of attachments) {
    keepBytes(library, attachment)
    for (const use of uses) {
      const place = placeNamed(library, use)
      if (place === null || isAttached(library, attachment.sha256, use) === 'there') continue
      const { page, note, extra } = use
      const after = writeUse(library, {
        id: null,
        sha256: attachment.sha256,
        caliberId: 'caliberId' in place ? place.caliberId : null,
        source: 'source' in place ? place.source : null,
        position: use.position ?? rows(library, usesAt(library, place)).length,
        page,
        note,
        extra,
      })
      noteUseChange(library, revision, change++, { before: null, after })
    }
  }
}
