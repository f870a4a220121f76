import { type CaliberFieldKey, caliberFields } from '../fields/caliber-fields.ts'
import { type FieldGroup, fieldGroups } from '../fields/field.ts'

/** A group of the form, with its fields in the order in which they are asked for. */
export interface FormGroup {
  readonly group: FieldGroup
  readonly label: string
  readonly keys: readonly CaliberFieldKey[]
}

const groups = Object.keys(fieldGroups) as readonly FieldGroup[]
const keys = Object.keys(caliberFields) as readonly CaliberFieldKey[]

/**
 * The groups of the form in order, each with its fields in the order of the table.
 *
 * @example
 * formOrder().map((part) => part.label).slice(0, 2) // ['Identity', 'Movement']
 */
export const formOrder = (): readonly FormGroup[] =>
  groups.map((group) => ({
    group,
    label: fieldGroups[group],
    keys: keys.filter((key) => caliberFields[key].group === group),
  }))
