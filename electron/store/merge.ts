import { LignebookError } from '../../core/api/errors.ts'
import { eraseUse, noteUseChange, useById, writeUse } from './attachment-uses.ts'
import type { ReadCaliber } from './caliber-rows.ts'
import { type Library, write } from './library.ts'
import { beginRevision, noteChange, remember } from './revisions.ts'
import { eraseCaliber, writeCaliber } from './write-caliber.ts'

/** Pictures and scans of the one that goes stand at the one that stays, each once. */
const moveAttachments = (library: Library, revision: number, from: number, keep: number): void => {
  const ids = library.prepare('select id from attachment_use where caliber_id = ? order by position, id').pluck()
  const own = ids.all(keep).map((id) => useById(library, Number(id)))
  let place = Math.max(-1, ...own.map((use) => use?.position ?? -1))
  ids.all(from).forEach((id, position) => {
    const before = useById(library, Number(id))
    if (before === null) return
    const twice = own.some((use) => use?.sha256 === before.sha256 && use.page === before.page)
    if (twice) eraseUse(library, before.id)
    else place += 1
    const after = twice ? null : writeUse(library, { ...before, caliberId: keep, position: place })
    noteUseChange(library, revision, position, { before, after })
  })
}

/**
 * Puts a caliber made of two in the place of one and takes the other out, as one step that can be taken back.
 * @throws LignebookError not-found, draft-not-saved
 */
export const mergeCalibers = async (
  library: Library,
  { keep, from }: { readonly keep: number; readonly from: number },
  { action, ...merged }: ReadCaliber & { readonly action: string },
): Promise<void> =>
  write(library, () => {
    const [kept, gone] = [remember(library, keep), remember(library, from)]
    if (kept === null || gone === null) throw new LignebookError('not-found', { what: 'One of the two calibers' })
    for (const [id, { entry }] of [
      [keep, kept],
      [from, gone],
    ] as const) {
      const name = `${entry.maker} ${entry.designation}`
      // A draft begun before the merge would take it back unseen when it is saved.
      if (library.prepare('select 1 from draft where caliber_id = ?').get(id))
        throw new LignebookError('draft-not-saved', { name })
    }
    const revision = beginRevision(library, action)
    // First the one that goes: taken back in the other order, it comes last and finds its name free.
    noteChange(library, revision, 0, { caliberId: from, before: gone, after: null })
    eraseCaliber(library, from)
    writeCaliber(library, keep, merged, { index: true })
    const { entry, disagree, doubtful } = merged
    noteChange(library, revision, 1, { caliberId: keep, before: kept, after: { entry, disagree, doubtful } })
    moveAttachments(library, revision, from, keep)
  })
