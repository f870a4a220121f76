import type { Place } from './table-state.ts'

interface Extent {
  /** With the row that is there to be typed in. */
  readonly rows: number
  readonly columns: number
  /** How many rows are seen at once. */
  readonly pageRows: number
}

/** Where a key leads from a cell of the grid; undefined where it leads nowhere, and the key is the page's own. */
export const placeByKey = (
  keys: string,
  { row, column }: Place,
  { rows, columns, pageRows }: Extent,
): Place | undefined => {
  const inside = (place: Place): Place | undefined =>
    place.row >= 0 && place.row < rows && place.column >= 0 && place.column < columns ? place : undefined
  const atRow = (to: number): Place => ({ row: Math.max(0, Math.min(to, rows - 1)), column })
  switch (keys) {
    case 'ArrowUp':
    case 'Shift+Enter':
      return atRow(row - 1)
    case 'ArrowDown':
    case 'Enter':
      return atRow(row + 1)
    case 'ArrowLeft':
      return inside({ row, column: column - 1 }) ?? { row, column }
    case 'ArrowRight':
      return inside({ row, column: column + 1 }) ?? { row, column }
    // Tab goes through the rows, and beyond the last cell out of the grid.
    case 'Tab':
      return inside({ row, column: column + 1 }) ?? inside({ row: row + 1, column: 0 })
    case 'Shift+Tab':
      return inside({ row, column: column - 1 }) ?? inside({ row: row - 1, column: columns - 1 })
    case 'PageUp':
      return atRow(row - pageRows)
    case 'PageDown':
      return atRow(row + pageRows)
    case 'Home':
      return { row, column: 0 }
    case 'End':
      return { row, column: columns - 1 }
    case 'Ctrl+Home':
      return { row: 0, column: 0 }
    case 'Ctrl+End':
      return { row: rows - 1, column: columns - 1 }
    default:
      return undefined
  }
}
