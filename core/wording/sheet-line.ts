import type { CaliberFieldKey } from '../fields/caliber-fields.ts'
import type { Finding, WorkingStep } from '../proofs/proof.ts'
import type { Caliber } from '../record/caliber.ts'
import { type ProofReport, reportFinding } from './proof-report.ts'
import { overruleSentence } from './severity.ts'

/** A finding as the sheet of proofs shows it, without the caliber's name. */
export interface FindingLine
  extends Pick<
    ProofReport,
    'proof' | 'outcome' | 'severity' | 'stated' | 'found' | 'unit' | 'difference' | 'allowed' | 'message'
  > {
  readonly working: Omit<WorkingStep, 'where'>[]
  /** What the owner made of it and why, in a sentence. */
  readonly overruled: string | null
  /** Key of the field or list to look at first: the missing one, or the first that the caliber states itself. */
  readonly field: string | null
}

const firstField = ({ missing, fields }: ProofReport, { values, inheritedKeys = [] }: Caliber): string | null => {
  const own = fields.find(
    (key) => values[key as CaliberFieldKey] !== undefined && !inheritedKeys.some((inherited) => inherited === key),
  )
  return missing[0] ?? own ?? fields[0] ?? null
}

/** One line of the sheet of proofs: a finding of a caliber, with its sentence and working and where to look. */
export const sheetLine = (finding: Finding, caliber: Caliber): FindingLine => {
  const report = reportFinding(finding, caliber, { withHints: false })
  const { proof, outcome, severity, stated, found, unit, difference, allowed, message, overruled, working } = report
  return {
    proof,
    outcome,
    severity,
    stated,
    found,
    unit,
    difference,
    allowed,
    message,
    overruled: overruled && overruleSentence(overruled),
    working: working.map(({ where: _, ...step }) => step),
    field: firstField(report, caliber),
  }
}
