import type { TableCell } from '../../../core/exchange/pasted-table.ts'
import type { TableColumn } from '../../../core/exchange/table-column.ts'
import { type CaliberFieldKey, caliberFields } from '../../../core/fields/caliber-fields.ts'
import { wordCellFault } from '../../../core/wording/table-problem.ts'
import { wordRemark } from '../../../core/wording/unusual-remark.ts'
import { echoOf, isMeasured } from '../entry/echo-of.ts'

/** What stands over a column: the field, or the heading of one left out. */
export const columnName = ({ heading, field }: TableColumn, column: number): string =>
  field === null ? heading || `column ${column + 1}` : caliberFields[field].label

/** What a cell was read as, in a word or two; empty where the print says it already. */
export const cellEcho = (field: CaliberFieldKey, typed: string, { read }: TableCell): string => {
  if (!read.ok) return 'refused'
  const def = caliberFields[field]
  if (read.quantity && isMeasured(def)) return echoOf(def.kind, typed, read.quantity)
  return def.kind === 'choice' && typeof read.value === 'string' && read.value !== typed.toLowerCase() ? read.value : ''
}

/** What there is to say of a cell at the foot of the table: why it is refused, what it was read as, what is unusual in it. */
export const cellSentence = (field: CaliberFieldKey, typed: string, cell: TableCell): string => {
  const { label } = caliberFields[field]
  if (!cell.read.ok) return wordCellFault(label, cell.read.problem)
  const echo = cellEcho(field, typed, cell)
  const remark = cell.read.remark ? ` ${wordRemark(field, cell.read.remark)}` : ''
  return `${label}: ${typed}${echo === '' ? '' : ` is read as ${echo}`}.${remark}`
}
