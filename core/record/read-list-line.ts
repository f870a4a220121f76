import type { ListColumn, ListKey } from '../fields/list-fields.ts'
import { listFields } from '../fields/list-fields.ts'
import type { Quantity, QuantityProblem } from '../quantities/quantity.ts'
import { readQuantity } from '../quantities/read-quantity.ts'
import type { ListLine } from './caliber.ts'
import { type ChoiceProblem, readChoice } from './read-choice.ts'
import { readNames } from './read-field.ts'
import type { FieldValue } from './reading.ts'

/** A cell of a list that must be filled and is not. */
export interface MissingCellProblem {
  readonly code: 'missing-cell'
}

export interface CellProblem {
  /** Key of the column. */
  readonly column: string
  readonly printed: string
  readonly problem: QuantityProblem | ChoiceProblem | MissingCellProblem
}

export type ListLineRead<K extends ListKey> =
  | { readonly ok: true; readonly line: ListLine<K> }
  | { readonly ok: false; readonly problems: readonly CellProblem[] }

/** What the lengths and counts of a list may be: nothing below nothing, nothing larger than a tower clock. */
const possibleLength = [0.001, 20000] as const
const possibleCount = [0, 1000] as const

type CellRead = { ok: true; value: FieldValue; quantity?: Quantity } | { ok: false; problem: CellProblem['problem'] }

const readCell = (column: ListColumn, printed: string): CellRead => {
  if (column.kind === 'choice') return readChoice({ choices: column.choices ?? {} }, printed)
  if (column.kind === 'texts') return { ok: true, value: readNames(printed) }
  if (column.kind === 'text') return { ok: true, value: printed.trim() }
  const read = readQuantity(column.kind, printed, column.kind === 'count' ? possibleCount : possibleLength)
  if (!read.ok) return read
  const { quantity } = read
  return { ok: true, value: quantity.value, ...(column.kind === 'length' && { quantity }) }
}

/** A cell of a file as text: numbers as written, lists of names with semicolons, anything else as nothing readable. */
const printedCell = (cell: unknown): string => {
  if (cell === undefined || cell === null) return ''
  if (typeof cell === 'string') return cell
  if (Array.isArray(cell)) return cell.map(String).join('; ')
  return typeof cell === 'number' ? String(cell) : JSON.stringify(cell)
}

/** Reads one line of a list by its columns; keys that no column has are left alone in the entry. */
export const readListLine = <K extends ListKey>(list: K, line: Readonly<Record<string, unknown>>): ListLineRead<K> => {
  const columns: Readonly<Record<string, ListColumn>> = listFields[list].columns
  const problems: CellProblem[] = []
  const cells: Record<string, FieldValue> = {}
  const quantities: Record<string, Quantity> = {}
  for (const [key, column] of Object.entries(columns)) {
    const printed = printedCell(line[key])
    if (printed.trim() === '') {
      if (!column.optional) problems.push({ column: key, printed, problem: { code: 'missing-cell' } })
      continue
    }
    // A list of names in a file is taken as it stands, whatever marks are in the names.
    const cell = line[key]
    const names = column.kind === 'texts' && Array.isArray(cell) ? cell.map((name) => String(name).trim()) : undefined
    const read: CellRead = names ? { ok: true, value: names.filter(Boolean) } : readCell(column, printed)
    if (!read.ok) {
      problems.push({ column: key, printed, problem: read.problem })
      continue
    }
    cells[key] = read.value
    if (read.quantity) quantities[key] = read.quantity
  }
  // The cells were read by the columns from which the line's type is written down.
  if (problems.length > 0) return { ok: false, problems }
  const read = Object.keys(quantities).length > 0 ? { ...cells, quantities } : cells
  return { ok: true, line: read as unknown as ListLine<K> }
}

/** A line on which nothing was filled in, as a form keeps one ready. */
export const isBlankLine = (line: Readonly<Record<string, unknown>>): boolean =>
  Object.values(line).every((cell) => printedCell(cell).trim() === '' || (Array.isArray(cell) && cell.length === 0))
