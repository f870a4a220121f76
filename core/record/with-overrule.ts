import type { CaliberEntry } from '../exchange/library-file.ts'
import type { Overrule } from '../proofs/severity.ts'

/** The entry with one proof overruled in this way, in place of what was said of it before; null takes the overrule back. */
export const withOverrule = (
  { overrules: before = [], ...entry }: CaliberEntry,
  proof: string,
  overrule: Omit<Overrule, 'proof'> | null,
): CaliberEntry => {
  const others = before.filter((other) => other.proof !== proof)
  const overrules = overrule === null ? others : [...others, { ...overrule, proof } as Overrule]
  return { ...entry, ...(overrules.length > 0 && { overrules }) } as CaliberEntry
}
