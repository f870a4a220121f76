/** A piece of a line of working: a fraction to be set one number over the other, or text as it stands. */
export type WorkingTerm =
  | { readonly above: string; readonly below: string }
  | { readonly text: string; readonly above?: never }

const fraction = /(?<![\d./])(\d+)\/(\d+)(?![\d./])/g

/**
 * A line of working in pieces, so that its fractions can be set as they are written by hand.
 * @example
 * workingTerms('80/10 × 2') // [{ above: '80', below: '10' }, { text: ' × 2' }]
 */
export const workingTerms = (line: string): readonly WorkingTerm[] => {
  const terms: WorkingTerm[] = []
  let end = 0
  for (const found of line.matchAll(fraction)) {
    const [whole, above = '', below = ''] = found
    if (found.index > end) terms.push({ text: line.slice(end, found.index) })
    terms.push({ above, below })
    end = found.index + whole.length
  }
  if (end < line.length) terms.push({ text: line.slice(end) })
  return terms
}
