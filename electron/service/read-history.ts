import type { CallOutput, RevisionChange } from '../../core/api/contract.ts'
import { type Revision, readRevision } from '../store/history.ts'
import type { Library } from '../store/library.ts'

/** A revision as the page compares it: the records before and after, without what the store remembers beside them. */
export const readHistory = async (
  library: Library,
  id: number,
  stretch: { readonly offset: number; readonly limit: number },
): Promise<CallOutput<'history.read'>> => {
  const { changes, later, ...revision } = await readRevision(library, id, stretch)
  return {
    ...revision,
    later: [...later],
    changes: changes.map(shown),
  }
}

const shown = (change: Revision['changes'][number]): RevisionChange => {
  if ('sourceKey' in change) return change
  if ('caliberId' in change) {
    return { caliberId: change.caliberId, before: change.before?.entry ?? null, after: change.after?.entry ?? null }
  }
  switch (change.kind) {
    case 'spring':
      return { springId: change.id, before: change.before, after: change.after }
    case 'order':
      return { orderId: change.id, before: change.before, after: change.after }
    case 'gauge':
      return { gaugeId: change.id, before: change.before, after: change.after }
  }
}
