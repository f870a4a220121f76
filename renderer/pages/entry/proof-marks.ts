import type { ProofReport } from '../../../core/wording/proof-report.ts'
import { proofTitle } from '../../../core/wording/proof-title.ts'
import { shownAs, shownWord } from '../../components/shown-as.ts'

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
    const doubting = reports.filter((report) => shownAs(report) === outcome)
    for (const field of new Set(doubting.flatMap(({ fields }) => fields))) {
      const [first, ...others] = doubting.filter(({ fields }) => fields.includes(field))
      if (first === undefined || marks.has(field)) continue
      const several = outcome === 'disagrees' ? 'proofs disagree' : 'proofs are doubtful'
      const text =
        others.length === 0 ? `${proofTitle(first.proof)}: ${shownWord(first)}` : `${others.length + 1} ${several}`
      marks.set(field, { outcome, text })
    }
  }
  return marks
}
