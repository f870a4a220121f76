import { type CaliberFieldKey, caliberFields } from '../../core/fields/caliber-fields.ts'
import type { FieldDef } from '../../core/fields/field.ts'
import { formatQuantity } from '../../core/quantities/format-quantity.ts'
import type { FieldValue } from '../../core/record/reading.ts'

/** A choice as its table says it: `pin-lever` is `pin lever`. */
export const wordChoice = (key: CaliberFieldKey, value: string): string => {
  const field: FieldDef = caliberFields[key]
  return field.kind === 'choice' ? (field.choices[value] ?? value) : value
}

/** A value as figure and unit, apart so that figures stand in one column. */
export const wordValue = (key: CaliberFieldKey, value: FieldValue): { text: string; unit: string } => {
  const field: FieldDef = caliberFields[key]
  if (typeof value !== 'number')
    return { text: typeof value === 'string' ? wordChoice(key, value) : value.join(', '), unit: '' }
  if (field.kind === 'choice' || field.kind === 'text' || field.kind === 'texts')
    return { text: String(value), unit: '' }
  const [text = '', unit = ''] = formatQuantity(field.kind, value).split(' ')
  return { text, unit: field.kind === 'rate' ? 'vph' : unit }
}
