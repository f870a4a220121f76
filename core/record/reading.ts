import type { Quantity } from '../quantities/quantity.ts'

/** The canonical value of a field: a number in the kind's unit, a word (text, or the key of a choice), or a list of names. */
export type FieldValue = number | string | readonly string[]

/** What one source says of one field: the value as printed, as read, and where it stands. */
export interface Reading<V extends FieldValue = FieldValue> {
  /** Exactly what was typed or printed. */
  readonly printed: string
  readonly value: V
  /** The quantity behind the value, for measured kinds. */
  readonly quantity?: Quantity
  /** Key of a source on the shelf; absent where the value has none. */
  readonly source?: string
  readonly page?: string
  readonly note?: string
  readonly chosen: boolean
}

/** A value that is accepted though unusual; the wording says so beside the field. */
export interface UnusualRemark {
  readonly code: 'unusual'
  readonly value: number
  readonly usual: readonly [number, number]
}
