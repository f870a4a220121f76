import { type CaliberFieldKey, caliberFields } from '../fields/caliber-fields.ts'
import { type ListKey, listFields } from '../fields/list-fields.ts'

/**
 * The label of a field or list by its key; a key of a newer version is its own label.
 * @example
 * labelOf('beatRateVph') // 'Beat rate'
 */
export const labelOf = (key: string): string =>
  Object.hasOwn(caliberFields, key)
    ? caliberFields[key as CaliberFieldKey].label
    : Object.hasOwn(listFields, key)
      ? listFields[key as ListKey].label
      : key
