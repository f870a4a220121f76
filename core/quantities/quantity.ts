import type Fraction from 'fraction.js'

/** The unit in which a handbook printed a value. */
export type PrintedUnit =
  | 'mm'
  | 'tenths-mm'
  | 'hundredths-mm'
  | 'micrometre'
  | 'ligne'
  | 'douzieme'
  | 'inch'
  | 'vph'
  | 'per-second'
  | 'per-minute'
  | 'hertz'
  | 'degree'
  | 'hour'
  | 'day'
  | 'count'
  | 'ratio'
  | 'year'

/** A printed value, read. All numbers are in the canonical unit of the kind. */
export interface Quantity {
  readonly value: number
  /** The same value as an exact fraction of the canonical unit. */
  readonly exact: Fraction
  readonly unit: PrintedUnit
  /** Half a unit of the last digit printed: the value may lie this far either side. Zero where the print is exact. */
  readonly halfStep: number
  /** Limits, where the print states them; either may stand alone (`max 1.21`). */
  readonly low?: number
  readonly high?: number
}

/** Why a printed value could not be read. `core/wording/quantity-problem.ts` says it in a sentence. */
export type QuantityProblem =
  | { readonly code: 'empty' }
  | { readonly code: 'unreadable'; readonly text: string }
  | { readonly code: 'ambiguous'; readonly text: string; readonly readings: readonly string[] }
  | { readonly code: 'size-number'; readonly text: string }
  | { readonly code: 'wrong-unit'; readonly text: string; readonly unit: string }
  | { readonly code: 'not-whole'; readonly text: string }
  | { readonly code: 'zero-denominator'; readonly text: string }
  | { readonly code: 'limits-crossed'; readonly text: string }
  | { readonly code: 'fit-not-tabulated'; readonly text: string }
  | {
      readonly code: 'impossible'
      readonly text: string
      readonly value: number
      readonly possible: readonly [number, number]
    }

export type QuantityRead =
  | { readonly ok: true; readonly quantity: Quantity }
  | { readonly ok: false; readonly problem: QuantityProblem }
