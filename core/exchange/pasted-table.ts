import { caliberFields } from '../fields/caliber-fields.ts'
import { blankEntry } from '../record/entry.ts'
import { type FieldRead, readField } from '../record/read-field.ts'
import { writeColumnUnit } from './column-unit.ts'
import type { CaliberEntry, EntryReading } from './library-file.ts'
import type { TableColumn } from './table-column.ts'

export type CellFault =
  | Extract<FieldRead, { ok: false }>['problem']
  | { readonly code: 'said-twice'; readonly text: string }

/** A cell as it was understood. `printed` carries the unit of its column where the cell itself had none. */
export interface TableCell {
  readonly column: number
  readonly printed: string
  readonly read: Extract<FieldRead, { ok: true }> | { readonly ok: false; readonly problem: CellFault }
}

/** A row of a table: one caliber. */
export interface TableRow {
  readonly maker: string
  readonly designation: string
  /** The cells in which something stands, but for those of columns left out. */
  readonly cells: readonly TableCell[]
  /** Why no caliber can be made of the row. */
  readonly refused: 'no-designation' | 'no-maker' | null
}

/** A cell that is refused, and where it stands. */
export interface RefusedCell {
  readonly column: number
  readonly printed: string
  readonly problem: CellFault
}

/** True where nothing stands in a row. */
export const isBlankTableRow = (row: readonly string[]): boolean => row.every((cell) => cell.trim() === '')

/**
 * Reads a row under its columns; `maker` holds for rows that name none. Never throws: what cannot be read is a cell
 * with its problem, and the other cells of the row are read all the same.
 */
export const readTableRow = (
  cells: readonly string[],
  columns: readonly TableColumn[],
  { maker }: { readonly maker: string },
): TableRow => {
  const read: TableCell[] = []
  const names = { maker: '', designation: '' }
  const said = new Set<string>()
  columns.forEach(({ field, unit }, column) => {
    const text = (cells[column] ?? '').trim()
    if (field === null || text === '') return
    const printed = 'possible' in caliberFields[field] ? writeColumnUnit(text, unit) : text
    if (said.has(field)) {
      read.push({ column, printed, read: { ok: false, problem: { code: 'said-twice', text } } })
      return
    }
    said.add(field)
    if (field === 'maker' || field === 'designation') names[field] = text
    read.push({ column, printed, read: readField(field, printed) })
  })
  const ofMaker = names.maker || maker.trim()
  const refused = names.designation === '' ? 'no-designation' : ofMaker === '' ? 'no-maker' : null
  return { maker: ofMaker, designation: names.designation, cells: read, refused }
}

/** The cells of a row that are refused, each with its reason. */
export const refusedCells = (row: TableRow): readonly RefusedCell[] =>
  row.cells.flatMap(({ column, printed, read }) => (read.ok ? [] : [{ column, printed, problem: read.problem }]))

/** The caliber that a row makes: every cell that could be read, with where it was printed; the refused ones are left out. */
export const entryOfTableRow = (
  row: TableRow,
  columns: readonly TableColumn[],
  { source, page }: { readonly source: string; readonly page: string },
): CaliberEntry => {
  const fields: Record<string, EntryReading[]> = {}
  for (const { column, printed, read } of row.cells) {
    const field = columns[column]?.field
    if (!read.ok || field === undefined || field === null || field === 'maker' || field === 'designation') continue
    const origin = source === '' ? {} : { source, ...(page.trim() === '' ? {} : { page: page.trim() }) }
    fields[field] = [{ printed, ...origin, chosen: true }]
  }
  return { ...blankEntry(), maker: row.maker, designation: row.designation, fields }
}
