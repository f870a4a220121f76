import type { CellFault, TableRow } from '../exchange/pasted-table.ts'
import { wordProblem } from './quantity-problem.ts'

/**
 * Says in one sentence why a cell of a table is refused.
 *
 * @example
 * wordCellFault('Third wheel', { code: 'said-twice', text: '75' }) // 'Third wheel: "75" stands in a second column of this field; leave one of the two columns out.'
 */
export const wordCellFault = (label: string, problem: CellFault): string => {
  switch (problem.code) {
    case 'said-twice':
      return `${label}: "${problem.text}" stands in a second column of this field; leave one of the two columns out.`
    // A table has no help beside each field to point to.
    case 'unreadable':
      return `${label}: "${problem.text}" cannot be read; write the figure, with its unit if need be, or empty the cell.`
    default:
      return wordProblem(label, problem)
  }
}

/**
 * Says in one sentence why no caliber can be made of a row.
 *
 * @example
 * wordRowFault('no-designation') // 'The row names no designation; write one, or empty the row.'
 */
export const wordRowFault = (refused: NonNullable<TableRow['refused']>): string =>
  refused === 'no-designation'
    ? 'The row names no designation; write one, or empty the row.'
    : 'No maker is stated; write the maker above the table, or in a column of its own.'
