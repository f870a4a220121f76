import { useMemo } from 'react'
import {
  entryOfTableRow,
  isBlankTableRow,
  readTableRow,
  refusedCells,
  type TableRow,
} from '../../../core/exchange/pasted-table.ts'
import type { TableColumn } from '../../../core/exchange/table-column.ts'
import { labelOf } from '../../../core/record/label-of.ts'
import { bareUnit } from '../../../core/record/with-source-unit.ts'
import { wordCellFault, wordRowFault } from '../../../core/wording/table-problem.ts'
import type { Offered } from './table-plan.ts'
import type { Place, Row, TableState } from './table-state.ts'

/** What is refused of a table, where it stands, and why. */
export interface Refusal {
  readonly place: Place
  readonly designation: string
  /** The field of a refused cell; null for a whole row. */
  readonly field: string | null
  readonly reason: string
}

export interface TableReading {
  /** The columns, each with the unit in which its bare numbers are read. */
  readonly columns: readonly TableColumn[]
  /** The rows as read; null for blank ones. */
  readonly rows: readonly (TableRow | null)[]
  readonly refusals: readonly Refusal[]
  /** The calibers that would go in. */
  readonly offered: readonly Offered[]
}

/** A column without a printed unit is in that of its source. */
const underSource = (columns: readonly TableColumn[], unitsAsPrinted: string | undefined): TableColumn[] =>
  columns.map((column) => {
    if (column.unit !== null || column.field === null) return column
    const unit = bareUnit(column.field, unitsAsPrinted)
    return unit === 'mm' ? column : { ...column, unit }
  })

const refusalsOf = (row: TableRow | null, index: number, columns: readonly TableColumn[]): Refusal[] => {
  if (row === null) return []
  const { designation, refused } = row
  const named = columns.findIndex(({ field }) => field === 'designation')
  if (refused !== null) {
    const place = { row: index, column: Math.max(0, named) }
    return [{ place, designation, field: null, reason: wordRowFault(refused) }]
  }
  return refusedCells(row).map(({ column, problem }) => {
    const field = columns[column]?.field ?? ''
    return { place: { row: index, column }, designation, field, reason: wordCellFault(labelOf(field), problem) }
  })
}

/** Reads the table as it stands; a row is read again only when it, the columns or the maker changed. */
export const useTableReading = (
  { columns: given, rows, maker, source, page }: TableState,
  unitsAsPrinted: string | undefined,
): TableReading => {
  const columns = useMemo(() => underSource(given, unitsAsPrinted), [given, unitsAsPrinted])
  const known = useMemo(() => ({ columns, maker, rows: new WeakMap<Row, TableRow>() }), [columns, maker])
  const read = useMemo(
    () =>
      rows.map((cells) => {
        if (isBlankTableRow(cells)) return null
        const row = known.rows.get(cells) ?? readTableRow(cells, known.columns, { maker: known.maker })
        known.rows.set(cells, row)
        return row
      }),
    [rows, known],
  )
  return useMemo(
    () => ({
      columns,
      rows: read,
      refusals: read.flatMap((row, index) => refusalsOf(row, index, columns)),
      offered: read.flatMap((row, index) =>
        row === null || row.refused !== null
          ? []
          : [{ row: index, entry: entryOfTableRow(row, columns, { source, page }) }],
      ),
    }),
    [columns, read, source, page],
  )
}
