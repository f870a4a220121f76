import type { CaliberFieldKey } from '../../../core/fields/caliber-fields.ts'
import type { ListKey } from '../../../core/fields/list-fields.ts'
import { formOrder } from '../../../core/record/form-order.ts'
import { cellOfField, cellOfList } from './cells.ts'

export interface FormSection {
  readonly name: string
  readonly label: string
  readonly keys: readonly CaliberFieldKey[]
  readonly lists: readonly ListKey[]
  /** The cell that a jump to the section goes to. */
  readonly first: string
}

const firstCell = (keys: readonly CaliberFieldKey[], lists: readonly ListKey[]): string => {
  const [key] = keys
  if (key) return cellOfField(key)
  const [list] = lists
  return list ? cellOfList(list, 0) : ''
}

const section = (name: string, label: string, keys: readonly CaliberFieldKey[], lists: readonly ListKey[]) => ({
  name,
  label,
  keys,
  lists,
  first: firstCell(keys, lists),
})

/** The form from top to bottom: the groups of the field table, the jewel list with its group, and the other lists. */
export const formSections: readonly FormSection[] = [
  ...formOrder().map(({ group, label, keys }) => section(group, label, keys, group === 'jewels' ? ['jewels'] : [])),
  section('lists', 'Oiling, depths, parts', [], ['lubrication', 'depths', 'parts', 'stripOrder']),
]
