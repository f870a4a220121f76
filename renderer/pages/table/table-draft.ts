import { z } from 'zod'
import { columnUnitsOf } from '../../../core/exchange/column-unit.ts'
import type { TableColumn } from '../../../core/exchange/table-column.ts'
import { type CaliberFieldKey, caliberFields } from '../../../core/fields/caliber-fields.ts'
import { newTable, type TableState } from './table-state.ts'

const name = 'lignebook.table'

const columnSchema = z
  .object({ heading: z.string(), field: z.string().nullable(), unit: z.string().nullable() })
  .transform(({ heading, field, unit }): TableColumn => {
    const known = field !== null && Object.hasOwn(caliberFields, field) ? (field as CaliberFieldKey) : null
    const units = known === null ? [] : columnUnitsOf(caliberFields[known].kind)
    return { heading, field: known, unit: units.find((one) => one === unit) ?? null }
  })
const draftSchema = z.object({
  source: z.string(),
  page: z.string(),
  maker: z.string(),
  pasted: z.boolean(),
  columns: z.array(columnSchema).min(1),
  rows: z.array(z.array(z.string())),
})

/** The table that was being entered in this window, so that a reload loses nothing; a new one where there was none. */
export const keptTable = (): TableState => {
  try {
    const parsed = draftSchema.safeParse(JSON.parse(sessionStorage.getItem(name) ?? 'null'))
    return parsed.success ? { ...newTable, ...parsed.data } : newTable
  } catch {
    return newTable
  }
}

/** Keeps the table in this window. False where it is too long to be kept. */
export const keepTable = ({ source, page, maker, pasted, columns, rows }: TableState): boolean => {
  try {
    sessionStorage.setItem(name, JSON.stringify({ source, page, maker, pasted, columns, rows }))
    return true
  } catch {
    return false
  }
}
