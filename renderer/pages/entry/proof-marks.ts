import { proveCaliber } from '../../../core/proofs/prove.ts'
import type { Caliber } from '../../../core/record/caliber.ts'
import { type ProofReport, reportFinding } from '../../../core/wording/proof-report.ts'

/** A proof's report under its heading. */
export type TitledReport = ProofReport & { readonly title: string }

/** What every proof says of the caliber as it is typed. */
export const titledReports = (caliber: Caliber): readonly TitledReport[] =>
  proveCaliber(caliber).map((finding) => ({ ...reportFinding(finding, caliber), title: finding.proof.title }))

/** What a field shows of the proofs that doubt it. */
export interface ProofMark {
  readonly outcome: 'disagrees' | 'doubtful'
  readonly text: string
}

/** The mark of each field that a proof disagrees with or doubts; where several do, the gravest leads and all are named. */
export const proofMarks = (reports: readonly TitledReport[]): ReadonlyMap<string, ProofMark> => {
  const marks = new Map<string, ProofMark>()
  for (const { outcome, fields, title } of reports) {
    if (outcome !== 'disagrees' && outcome !== 'doubtful') continue
    for (const field of fields) {
      const before = marks.get(field)
      const says = `${title}: ${outcome === 'disagrees' ? 'disagrees' : 'doubtful'}`
      marks.set(field, {
        outcome: before?.outcome === 'disagrees' ? 'disagrees' : outcome,
        text: before === undefined ? says : `${before.text}. ${says}`,
      })
    }
  }
  return marks
}
