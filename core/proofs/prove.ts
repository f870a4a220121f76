import { OutsideRange } from '../formulas/outside-range.ts'
import type { Caliber } from '../record/caliber.ts'
import { proofs } from './index.ts'
import type { Finding, Judgement, Proof } from './proof.ts'

/** What one proof finds of a caliber; figures outside the range of its formula are an outcome, not a failure. */
export const judgeProof = (proof: Proof, caliber: Caliber): Judgement => {
  try {
    return proof.judge(caliber)
  } catch (error) {
    if (error instanceof OutsideRange) return { outcome: 'outside-range', reason: error.code, details: error.details }
    throw error
  }
}

/** What every proof finds of a caliber, in the order of the list. Proofs that say nothing of this caliber are left out. */
export const proveCaliber = (caliber: Caliber): readonly Finding[] => {
  const findings: Finding[] = []
  for (const proof of proofs) {
    if (proof.appliesTo?.(caliber.values, caliber.readings) === false) continue
    findings.push({ proof, judgement: judgeProof(proof, caliber) })
  }
  return findings
}
