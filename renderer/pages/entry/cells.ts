import type { CaliberFieldKey } from '../../../core/fields/caliber-fields.ts'
import { type ListKey, listFields } from '../../../core/fields/list-fields.ts'

/** The name of a field's cell in the form, which is also the end of its id in the page. */
export const cellOfField = (key: CaliberFieldKey): string => key

/** The name of the line beside the form in which the reason of the chosen reading is noted. */
export const cellOfNote = (key: CaliberFieldKey): string => `${key}.note`

/** Where an overrule was made: beside the form, among the proofs, and no cell of it. */
export const cellOfOverrule = (proof: string): string => `overrule.${proof}`

/** The name of a cell of a list: `jewels.0.place`; without a column, the first of the line. */
export const cellOfList = (list: ListKey, line: number, column?: string): string =>
  `${list}.${line}.${column ?? Object.keys(listFields[list].columns)[0]}`

/** The id of a cell's control in the page. */
export const idOfCell = (cell: string): string => `cell-${cell.replaceAll('.', '-')}`
