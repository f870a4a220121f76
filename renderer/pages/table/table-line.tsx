import type { CSSProperties } from 'react'
import type { TableRow } from '../../../core/exchange/pasted-table.ts'
import type { TableColumn } from '../../../core/exchange/table-column.ts'
import { wordRowFault } from '../../../core/wording/table-problem.ts'
import { CellInput } from './cell-input.tsx'
import { cellEcho, columnName } from './cell-text.ts'
import type { Place, Row } from './table-state.ts'

/** The id of a cell in the page. */
export const idOfPlace = ({ row, column }: Place) => `table-${row}-${column}`

interface TableLineProps {
  readonly index: number
  /** The row that is there to be typed in. */
  readonly last: boolean
  readonly columns: readonly TableColumn[]
  readonly typed: Row
  readonly read: TableRow | null
  /** The column in which one stands, if it is in this row. */
  readonly at: number | null
  readonly editing: { readonly text: string; readonly whole: boolean } | null
  readonly style: CSSProperties
  readonly onTouch: (column: number) => void
  readonly onCommit: (text: string, keys: string) => void
  readonly onCancel: () => void
}

/** A row of the table: each cell as typed, and below it what it was read as, or that it is refused. */
export const TableLine = ({
  index,
  last,
  columns,
  typed,
  read,
  at,
  editing,
  style,
  onTouch,
  onCommit,
  onCancel,
}: TableLineProps) => (
  <tr aria-rowindex={index + 2} className="table-line" data-refused={read?.refused != null} style={style}>
    <th scope="row" aria-colindex={1} className="table-number">
      {last ? '+' : index + 1}
      {read?.refused && <span className="out-of-sight"> {wordRowFault(read.refused)}</span>}
    </th>
    {columns.map((tableColumn, column) => {
      const { field } = tableColumn
      const text = typed[column] ?? ''
      const cell = read?.cells.find((one) => one.column === column)
      const echo = cell && field ? cellEcho(field, text, cell) : ''
      return (
        // biome-ignore lint/a11y/useKeyWithClickEvents: the grid has the focus and takes every key
        <td
          // biome-ignore lint/suspicious/noArrayIndexKey: a column is its place
          key={column}
          id={idOfPlace({ row: index, column })}
          // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: a cell of a grid, not of a table that is only read
          role="gridcell"
          tabIndex={-1}
          aria-colindex={column + 2}
          aria-selected={column === at}
          aria-invalid={cell?.read.ok === false || undefined}
          className="table-cell"
          data-left-out={field === null}
          onClick={() => onTouch(column)}
        >
          {column === at && editing ? (
            <CellInput
              label={`${columnName(tableColumn, column)}, row ${index + 1}`}
              first={editing}
              onCommit={onCommit}
              onCancel={onCancel}
            />
          ) : (
            <>
              <span className="typed">{text}</span>
              {echo !== '' && <span className="echo">{echo}</span>}
            </>
          )}
        </td>
      )
    })}
  </tr>
)
