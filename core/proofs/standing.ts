import type { Outcome } from './proof.ts'
import type { Severity } from './severity.ts'

/** How a finding stands after overruling: its weight, and where it weighs nothing, whether it could be checked. The gravest first. */
export const standings = ['wrong', 'doubtful', 'accepted', 'cannot-check', 'agrees'] as const
export type Standing = (typeof standings)[number]

/**
 * How a finding stands by its outcome and its weight.
 * @example
 * standingOf({ outcome: 'disagrees', severity: 'wrong' }) // 'wrong'
 */
export const standingOf = ({ outcome, severity }: { outcome: Outcome; severity: Severity }): Standing =>
  severity !== 'none' ? severity : outcome === 'cannot-check' ? 'cannot-check' : 'agrees'

/** How a caliber stands by all its findings: as its gravest, sound where none is wrong or doubtful, unproved where nothing could be checked. */
export const caliberStanding = (of: ReadonlySet<Standing>): 'wrong' | 'doubtful' | 'sound' | 'unproved' => {
  if (of.has('wrong')) return 'wrong'
  if (of.has('doubtful')) return 'doubtful'
  return of.has('agrees') || of.has('accepted') ? 'sound' : 'unproved'
}
