import type { CaliberFieldKey, caliberFields } from '../fields/caliber-fields.ts'
import type { FieldDef } from '../fields/field.ts'
import type { ListKey } from '../fields/list-fields.ts'
import type { Overrule } from '../proofs/severity.ts'
import type { Quantity } from '../quantities/quantity.ts'
import type { Reading } from './reading.ts'

type ChoiceOf<D> = D extends { choices: infer C } ? keyof C & string : never

/** The type of a field's canonical value, inferred from its row in the table. */
export type ValueOf<K extends CaliberFieldKey> = (typeof caliberFields)[K] extends infer D extends FieldDef
  ? D['kind'] extends 'choice'
    ? ChoiceOf<D>
    : D['kind'] extends 'texts'
      ? readonly string[]
      : D['kind'] extends 'text'
        ? string
        : number
  : never

/** The chosen value of each field that has one. */
export type CaliberValues = { readonly [K in CaliberFieldKey]?: ValueOf<K> }

export interface JewelGroup {
  readonly place: string
  readonly kind: string
  readonly count: number
}
export interface OilingPoint {
  readonly place: string
  readonly lubricant: string
  readonly amount?: string
  readonly note?: string
}
export interface Depth {
  readonly driver: string
  readonly driven: string
  readonly driverPitchMm?: number
  readonly drivenPitchMm?: number
  readonly centreDistanceMm?: number
  /** How each size was printed, by its column. */
  readonly quantities?: Readonly<Record<string, Quantity>>
}
export interface Part {
  readonly part: string
  readonly number?: string
  readonly note?: string
}
export interface StripStep {
  readonly part: string
  readonly after?: readonly string[]
  readonly caution?: string
}

export interface CaliberLists {
  readonly jewels: readonly JewelGroup[]
  readonly lubrication: readonly OilingPoint[]
  readonly depths: readonly Depth[]
  readonly parts: readonly Part[]
  readonly stripOrder: readonly StripStep[]
}
export type ListLine<K extends ListKey> = CaliberLists[K][number]

/** A caliber as the proofs and the pages see it: everything read, nothing worded. */
export interface Caliber {
  readonly values: CaliberValues
  readonly readings: { readonly [K in CaliberFieldKey]?: readonly Reading<ValueOf<K>>[] }
  readonly lists: CaliberLists
  /** What its owner overruled of its findings; its own, never those of a base. */
  readonly overrules?: readonly Overrule[]
  /** The caliber on which this one is based, where it is known; what is not stated here was taken from it. */
  readonly base?: Caliber
  readonly inheritedKeys?: readonly CaliberFieldKey[]
}
