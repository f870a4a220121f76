import { type CaliberFieldKey, caliberFields } from '../fields/caliber-fields.ts'
import type { FieldDef } from '../fields/field.ts'
import { formatQuantity } from '../quantities/format-quantity.ts'
import type { UnusualRemark } from '../record/reading.ts'

/**
 * Says that a value is accepted though unusual.
 * @example
 * wordRemark('escapeTeeth', { code: 'unusual', value: 12, usual: [13, 30] }) // 'Escape teeth: 12 is unusual; most lie between 13 and 30. Kept as written.'
 */
export const wordRemark = (key: CaliberFieldKey, remark: UnusualRemark): string => {
  const def: FieldDef = caliberFields[key]
  const say = (value: number) => ('possible' in def ? formatQuantity(def.kind, value) : String(value))
  const [least, most] = remark.usual
  const usual = least === most ? `it is nearly always ${say(least)}` : `most lie between ${say(least)} and ${say(most)}`
  return `${def.label}: ${say(remark.value)} is unusual; ${usual}. Kept as written.`
}
