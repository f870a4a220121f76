import { foldHeading } from './fold-heading.ts'

const most = 5000
const known = new Map<string, string>()

/**
 * A name folded as a heading is; the same few names recur in every caliber, so each is folded once.
 * @example
 * foldedName('Third Wheel') // 'thirdwheel'
 */
export const foldedName = (text: string): string => {
  const before = known.get(text)
  if (before !== undefined) return before
  if (known.size >= most) known.clear()
  const folded = foldHeading(text)
  known.set(text, folded)
  return folded
}
