import type { CallOutput } from '../../core/api/contract.ts'
import { readRevision } from '../store/history.ts'
import type { Library } from '../store/library.ts'

/** A revision as the page compares it: the entries before and after, without what the store remembers beside them. */
export const readHistory = async (
  library: Library,
  id: number,
  stretch: { readonly offset: number; readonly limit: number },
): Promise<CallOutput<'history.read'>> => {
  const { changes, later, ...revision } = await readRevision(library, id, stretch)
  return {
    ...revision,
    later: [...later],
    changes: changes.map((change) =>
      'sourceKey' in change
        ? change
        : { caliberId: change.caliberId, before: change.before?.entry ?? null, after: change.after?.entry ?? null },
    ),
  }
}
