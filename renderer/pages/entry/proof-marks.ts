import type { ProofReport } from '../../../core/wording/proof-report.ts'
import { proofTitle } from '../../components/proof-list.tsx'

/** What a field shows of the proofs that doubt it. */
export interface ProofMark {
  readonly outcome: 'disagrees' | 'doubtful'
  /** What stands at the field: the proof, or how many. */
  readonly text: string
}

/** The mark of each field that a proof disagrees with or doubts; where several do, the gravest leads and they are counted. */
export const proofMarks = (reports: readonly ProofReport[]): ReadonlyMap<string, ProofMark> => {
  const marks = new Map<string, ProofMark>()
  for (const outcome of ['disagrees', 'doubtful'] as const) {
    const doubting = reports.filter((report) => report.outcome === outcome)
    for (const field of new Set(doubting.flatMap(({ fields }) => fields))) {
      const titles = doubting.filter(({ fields }) => fields.includes(field)).map(({ proof }) => proofTitle(proof))
      const [first, ...others] = titles
      const several = outcome === 'disagrees' ? 'proofs disagree' : 'proofs are doubtful'
      const text = others.length === 0 ? `${first}: ${outcome}` : `${titles.length} ${several}`
      if (!marks.has(field)) marks.set(field, { outcome, text })
    }
  }
  return marks
}
