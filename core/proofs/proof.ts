import type { CaliberFieldKey } from '../fields/caliber-fields.ts'
import type { ListKey } from '../fields/list-fields.ts'
import type { OutsideRangeCode } from '../formulas/outside-range.ts'
import type { Caliber, CaliberValues } from '../record/caliber.ts'

export type Outcome = 'agrees' | 'disagrees' | 'doubtful' | 'cannot-check' | 'outside-range'

/** One line of working, as a watchmaker would write it on paper. */
export interface WorkingStep {
  /** The sum with its numbers in it: `80/10 × 75/10 × 80/8 × 2 × 15`. */
  readonly formula: string
  /** What each number in it is, by field key or by name. */
  readonly where: Readonly<Record<string, number | string>>
  /** The result; a text where it is a fraction that no decimal holds (`9973 1/3`). */
  readonly gives: number | string
  /** What the result counts, where the sum alone does not say. */
  readonly unit?: string
}

/** What a proof found, as data. `core/wording` makes the sentence, last. `R` are the reasons that the proof declares. */
export type Judgement<R extends string = string> =
  | {
      readonly outcome: 'agrees' | 'disagrees' | 'doubtful'
      readonly stated: number | null
      readonly found: number | null
      readonly unit: string
      /** What was found less what is stated; without a stated figure, how far what was found lies from the rule. */
      readonly difference: number | null
      /** The greatest difference that still agrees, in the same unit; null where the rule is an order and sets none. */
      readonly allowed: number | null
      readonly working: readonly WorkingStep[]
      /** A code for the wording to choose its sentence by, with the figures it needs. */
      readonly reason: R
      readonly details?: Readonly<Record<string, number | string>>
      /** The fields looked at, where the definition cannot name them beforehand. */
      readonly fields?: readonly CaliberFieldKey[]
    }
  | {
      readonly outcome: 'cannot-check'
      readonly missing: readonly (CaliberFieldKey | ListKey)[]
      /** Why it cannot be told where nothing is missing; `core/wording/outside-range.ts` says it. */
      readonly reason?: OutsideRangeCode
      readonly details?: Readonly<Record<string, number | string>>
    }
  | {
      readonly outcome: 'outside-range'
      readonly reason: string
      readonly details?: Readonly<Record<string, number | string>>
    }

/** The fields a proof declared, and no others: `needs` are there, `uses` may be. */
export type DeclaredValues<N extends CaliberFieldKey, U extends CaliberFieldKey> = {
  readonly [K in N]: NonNullable<CaliberValues[K]>
} & { readonly [K in U]?: CaliberValues[K] }

export interface ProofDefinition<N extends CaliberFieldKey, U extends CaliberFieldKey, R extends string> {
  /** The statement that must be true; the file's name. */
  readonly id: string
  /** The statement as a heading: 'Beat rate follows the train'. */
  readonly title: string
  /** One sentence for the glossary: what it holds up, and what follows where it fails. */
  readonly meaning: string
  /** Fields without which nothing can be said; the runner names the missing ones. */
  readonly needs: readonly N[]
  /** Fields that are used where they are stated. */
  readonly uses: readonly U[]
  readonly lists: readonly ListKey[]
  /** Of the fields used, those that this caliber does need and has not stated: the other count of a pair begun. */
  readonly missingBesides?: (values: CaliberValues) => readonly U[]
  /** How far off still agrees, and why. */
  readonly tolerance: { readonly allows: string; readonly why: string }
  /** Where the rule stands in print, or 'common practice'. */
  readonly source: string
  /** For which movements the rule holds. */
  readonly validity: string
  /** Every reason that the judge can give; each has its sentence in `core/wording/findings`. */
  readonly reasons: readonly R[]
  /** False where the statement says nothing of this caliber (no seconds hand, so nothing for it to turn). */
  readonly appliesTo?: (values: CaliberValues, readings: Caliber['readings']) => boolean
  readonly judge: (values: DeclaredValues<N, U>, caliber: Omit<Caliber, 'values'>) => Judgement<NoInfer<R>>
}

/** A proof with its field types forgotten, as the list and the runner hold it. */
export interface Proof
  extends Omit<
    ProofDefinition<CaliberFieldKey, CaliberFieldKey, string>,
    'judge' | 'needs' | 'uses' | 'missingBesides'
  > {
  readonly needs: readonly CaliberFieldKey[]
  readonly uses: readonly CaliberFieldKey[]
  readonly judge: (caliber: Caliber) => Judgement
}

/** A judgement with the proof that made it. */
export interface Finding {
  readonly proof: Proof
  readonly judgement: Judgement
}
