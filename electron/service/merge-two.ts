import { LignebookError } from '../../core/api/errors.ts'
import { mergeEntries } from '../../core/record/merge-entries.ts'
import { readEntry } from '../../core/record/read-entry.ts'
import { readCaliber } from '../store/calibers.ts'
import type { Library } from '../store/library.ts'
import { mergeCalibers } from '../store/merge.ts'
import { basesOf, namesOfEntries, recountVariants } from './families.ts'
import { proveEntry } from './prove-entry.ts'

/** Makes two records of one caliber into one, proved anew, as one step that can be taken back. */
export const mergeTwo = async (
  library: Library,
  ids: { readonly keep: number; readonly from: number },
): Promise<void> => {
  const [kept, gone] = [await readCaliber(library, ids.keep), await readCaliber(library, ids.from)]
  if (kept === null || gone === null) throw new LignebookError('not-found', { what: 'One of the two calibers' })
  const { entry } = mergeEntries(kept, gone)
  const { values, disagree, doubtful } = proveEntry(entry, await basesOf(library, readEntry(entry).caliber, ids.keep))
  const action = `merging of ${gone.maker} ${gone.designation} into ${kept.maker} ${kept.designation}`
  await mergeCalibers(library, ids, { entry, values, disagree, doubtful, action })
  await recountVariants(library, namesOfEntries([kept, gone, entry]))
}
