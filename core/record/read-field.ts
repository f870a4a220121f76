import { type CaliberFieldKey, caliberFields } from '../fields/caliber-fields.ts'
import type { FieldDef } from '../fields/field.ts'
import type { Quantity, QuantityProblem } from '../quantities/quantity.ts'
import { readQuantity } from '../quantities/read-quantity.ts'
import type { FieldValue, UnusualRemark } from './reading.ts'

/** A word that is none of a field's choices; `choices` are their labels. */
export interface ChoiceProblem {
  readonly code: 'not-a-choice'
  readonly text: string
  readonly choices: readonly string[]
}

export type FieldRead =
  | { readonly ok: true; readonly value: FieldValue; readonly quantity?: Quantity; readonly remark?: UnusualRemark }
  | { readonly ok: false; readonly problem: QuantityProblem | ChoiceProblem }

const fold = (word: string): string =>
  word
    .trim()
    .toLowerCase()
    .replace(/[\s,_-]+/g, ' ')

type Choices = Readonly<Record<string, string>>

/** The folded words of each field's choices, made once for a whole library. */
const foldedChoices = new WeakMap<Choices, ReadonlyMap<string, string>>()

const wordsOf = (choices: Choices): ReadonlyMap<string, string> => {
  const known = foldedChoices.get(choices)
  if (known) return known
  const words = new Map([
    ...Object.entries(choices).map(([key, label]) => [fold(label), key] as const),
    ...Object.keys(choices).map((key) => [fold(key), key] as const),
  ])
  foldedChoices.set(choices, words)
  return words
}

/** Recognises a choice by its key or its label, whatever the capitals, hyphens and commas. */
export const readChoice = (choices: Choices, printed: string): FieldRead => {
  if (Object.hasOwn(choices, printed)) return { ok: true, value: printed }
  if (printed.trim() === '') return { ok: false, problem: { code: 'empty' } }
  const found = wordsOf(choices).get(fold(printed))
  if (found !== undefined) return { ok: true, value: found }
  return { ok: false, problem: { code: 'not-a-choice', text: printed, choices: Object.values(choices) } }
}

/**
 * The names in a list written with commas between them, or semicolons where a name holds a comma.
 * @example
 * readNames('17-220, V. 17') // ['17-220', 'V. 17']
 */
export const readNames = (printed: string): readonly string[] =>
  printed
    .split(printed.includes(';') ? ';' : ',')
    .map((name) => name.trim())
    .filter((name) => name !== '')

/**
 * Writes names as `readNames` reads them.
 * @example
 * writeNames(['17-220', 'V. 17']) // '17-220, V. 17'
 */
export const writeNames = (names: readonly string[]): string =>
  names.some((name) => name.includes(',')) ? `${names.join('; ')}${names.length === 1 ? ';' : ''}` : names.join(', ')

/** Reads what was printed for one field into its canonical value. */
export const readField = (key: CaliberFieldKey, printed: string): FieldRead => {
  const def: FieldDef = caliberFields[key]
  if (def.kind === 'choice') return readChoice(def.choices, printed)
  if (!('possible' in def)) {
    const value = def.kind === 'text' ? printed.trim() : readNames(printed)
    return value.length === 0 ? { ok: false, problem: { code: 'empty' } } : { ok: true, value }
  }
  const read = readQuantity(def.kind, printed, def.possible)
  if (!read.ok) return read
  const { quantity } = read
  const { value } = quantity
  const [least, most] = def.usual
  if (value >= least && value <= most) return { ok: true, value, quantity }
  return { ok: true, value, quantity, remark: { code: 'unusual', value, usual: def.usual } }
}
