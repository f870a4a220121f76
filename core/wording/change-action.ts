import type { CaliberEntry } from '../exchange/library-file.ts'
import { compareEntries } from '../record/compare-entries.ts'
import { proofTitle } from './proof-title.ts'

/** What the saving of a caliber is called in the history and by undo: `change of Verrin 17-220`. */
export const changeAction = (before: CaliberEntry | null, after: CaliberEntry): string => {
  const name = `${after.maker} ${after.designation}`
  if (before === null) return `entry of ${name}`
  const [difference, ...others] = compareEntries(before, after)
  if (difference?.what !== 'overrule' || others.length > 0) return `change of ${name}`
  const overrule = `overrule of “${proofTitle(difference.key)}” at ${name}`
  return difference.after === undefined ? `taking back of the ${overrule}` : overrule
}
