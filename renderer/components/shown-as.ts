import type { Outcome } from '../../core/proofs/proof.ts'
import type { ProofReport } from '../../core/wording/proof-report.ts'
import { overruleWords } from '../../core/wording/severity.ts'
import { outcomeWords } from './outcome-mark.tsx'

/** The group in which a finding stands and the colour it has: its outcome, unless its owner says otherwise. */
export type Shown = Outcome | 'accepted'

/** Where a finding stands after its overrule. */
export const shownAs = ({ outcome, overruled }: Pick<ProofReport, 'outcome' | 'overruled'>): Shown =>
  !overruled?.applies ? outcome : overruled.severity === 'wrong' ? 'disagrees' : overruled.severity

/** What is said of a finding in a word or two. */
export const shownWord = ({ outcome, overruled }: Pick<ProofReport, 'outcome' | 'overruled'>): string =>
  overruled?.applies ? overruleWords[overruled.severity] : outcomeWords[outcome]
