import { type CaliberFieldKey, caliberFields } from '../fields/caliber-fields.ts'
import type { FieldDef } from '../fields/field.ts'
import type { Quantity, QuantityProblem } from '../quantities/quantity.ts'
import { readQuantity } from '../quantities/read-quantity.ts'
import { type ChoiceProblem, readChoice } from './read-choice.ts'
import type { FieldValue, UnusualRemark } from './reading.ts'

export type FieldRead =
  | { readonly ok: true; readonly value: FieldValue; readonly quantity?: Quantity; readonly remark?: UnusualRemark }
  | { readonly ok: false; readonly problem: QuantityProblem | ChoiceProblem }

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
  if (def.kind === 'choice') return readChoice(def, printed)
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
