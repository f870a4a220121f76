import type { Caliber, CaliberLists, CaliberValues } from '../../core/record/caliber.ts'
import { caliberOf } from './caliber-of.ts'

/** A caliber with these values and these lists and nothing else. */
export const caliberWithLists = (lists: Partial<CaliberLists>, values: CaliberValues = {}): Caliber => {
  const caliber = caliberOf(values)
  return { ...caliber, lists: { ...caliber.lists, ...lists } }
}
