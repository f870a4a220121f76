import { z } from 'zod'
import type { Outcome } from './proof.ts'

/** How much a finding weighs: what is counted, grouped and marked by. */
export type Severity = 'wrong' | 'doubtful' | 'accepted' | 'none'

const outcomes = [
  'agrees',
  'disagrees',
  'doubtful',
  'cannot-check',
  'outside-range',
] as const satisfies readonly Outcome[]

/** What an overrule may make of a finding. */
export const overruleSeverities = ['accepted', 'doubtful', 'wrong'] as const satisfies readonly Severity[]

/** What an overrule makes of a finding: never nothing, so that an accepted one stays in sight. */
export type OverruleSeverity = (typeof overruleSeverities)[number]

/** The owner's word on one finding of one caliber, as the entry and the exchange file carry it. */
export const overruleSchema = z.looseObject({
  /** The id of the proof; one of a newer version is kept. */
  proof: z.string().min(1),
  severity: z.enum(overruleSeverities),
  reason: z.string().regex(/\S/),
  /** The outcome for which it was given: it applies for as long as the proof comes to that. */
  of: z.enum(outcomes),
})
export type Overrule = z.infer<typeof overruleSchema>

/** The overrules of a caliber: one a proof. */
export const overrulesSchema = z
  .array(overruleSchema)
  .refine((overrules) => new Set(overrules.map(({ proof }) => proof)).size === overrules.length, 'overruled-twice')

/** What a finding weighs, and the overrule it has; one that was given for another outcome does not apply. */
export interface Weight {
  readonly severity: Severity
  readonly overruled: { readonly severity: OverruleSeverity; readonly reason: string; readonly applies: boolean } | null
}

const ofOutcome: Readonly<Record<Outcome, Severity>> = {
  agrees: 'none',
  disagrees: 'wrong',
  doubtful: 'doubtful',
  'cannot-check': 'none',
  'outside-range': 'doubtful',
}

/** How much an outcome weighs where nobody has overruled it. */
export const severityOf = (outcome: Outcome): Severity => ofOutcome[outcome]

/** How much a finding weighs after the caliber's own overrules. The outcome itself stays what it is. */
export const weigh = (proof: string, outcome: Outcome, overrules: readonly Overrule[] = []): Weight => {
  const own = overrules.find((overrule) => overrule.proof === proof)
  if (own === undefined) return { severity: severityOf(outcome), overruled: null }
  const { severity, reason, of } = own
  const applies = of === outcome
  return { severity: applies ? severity : severityOf(outcome), overruled: { severity, reason, applies } }
}
