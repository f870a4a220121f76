import type { CaliberFieldKey } from '../../core/fields/caliber-fields.ts'
import type { Outcome } from '../../core/proofs/proof.ts'
import type { ProofReport } from '../../core/wording/proof-report.ts'
import { shownAs } from './shown-as.ts'

/** The worst outcome of the proofs that looked at a field. */
export const worstOf = (field: CaliberFieldKey, reports: readonly ProofReport[]): Outcome | null => {
  const outcomes = reports.filter(({ fields }) => fields.includes(field)).map(shownAs)
  return outcomes.includes('disagrees') ? 'disagrees' : outcomes.includes('doubtful') ? 'doubtful' : null
}
