import { misprintHelp } from '../proofs/misprint-help.ts'
import type { Finding, Outcome, WorkingStep } from '../proofs/proof.ts'
import { proveCaliber } from '../proofs/prove.ts'
import { type Weight, weigh } from '../proofs/severity.ts'
import type { Caliber } from '../record/caliber.ts'
import { labelOf } from '../record/label-of.ts'
import { missingBaseSentence } from './base-sentence.ts'
import { findingSentence } from './finding-sentence.ts'
import { listed } from './listed.ts'
import { misprintSentence } from './misprint-sentence.ts'
import { outsideRangeSentence } from './outside-range.ts'
import { favouredSentences } from './sources-sentence.ts'

/** A finding as pages and terminal show it, with its sentence. */
export interface ProofReport extends Weight {
  readonly proof: string
  readonly outcome: Outcome
  readonly stated: number | null
  readonly found: number | null
  readonly unit: string | null
  readonly difference: number | null
  readonly allowed: number | null
  /** Keys of the fields and lists without which nothing can be said. */
  readonly missing: readonly string[]
  /** Keys of the fields and lists that the proof looked at. */
  readonly fields: readonly string[]
  readonly working: readonly WorkingStep[]
  readonly source: string
  readonly message: string
  /** Single values that, changed by a plausible slip, would make a disagreeing proof agree; the likeliest first. */
  readonly hints: readonly string[]
}

const nothing = { stated: null, found: null, unit: null, difference: null, allowed: null, working: [], hints: [] }

/**
 * A finding with its sentence. The fields it looked at are those it needs and, where the caliber is given, those it used.
 * Looking for hints costs a millisecond or two, so they can be left out.
 */
export const reportFinding = (
  { proof, judgement }: Finding,
  caliber?: Caliber,
  { withHints = true }: { readonly withHints?: boolean } = {},
): ProofReport => {
  const used = proof.uses.filter((key) => caliber === undefined || caliber.values[key] !== undefined)
  const base = {
    proof: proof.id,
    fields: [...proof.needs, ...used, ...proof.lists],
    source: proof.source,
    ...weigh(proof.id, judgement.outcome, caliber?.overrules),
  }
  if (judgement.outcome === 'cannot-check') {
    const { outcome, missing, reason, details } = judgement
    const { basedOn } = caliber?.values ?? {}
    const message =
      basedOn !== undefined && missing.includes('basedOn')
        ? missingBaseSentence(basedOn)
        : reason !== undefined
          ? outsideRangeSentence(reason, details)
          : `Cannot be checked yet. Not stated: ${listed(missing.map((key) => labelOf(key).toLowerCase()))}.`
    return { ...base, ...nothing, outcome, missing, message }
  }
  if (judgement.outcome === 'outside-range') {
    const message = outsideRangeSentence(judgement.reason, judgement.details)
    return { ...base, ...nothing, outcome: judgement.outcome, missing: [], message }
  }
  const { outcome, stated, found, unit, difference, allowed, working } = judgement
  const message = findingSentence(judgement) + (caliber === undefined ? '' : favouredSentences(judgement, caliber))
  return {
    ...base,
    fields: judgement.fields ?? base.fields,
    outcome,
    stated,
    found,
    unit,
    difference,
    allowed,
    missing: [],
    working,
    message,
    hints: caliber === undefined || !withHints ? [] : misprintHelp({ proof, judgement }, caliber).map(misprintSentence),
  }
}

/** Every finding of a caliber, with its sentence. */
export const proofReports = (caliber: Caliber): readonly ProofReport[] =>
  proveCaliber(caliber).map((finding) => reportFinding(finding, caliber))
