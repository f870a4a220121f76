import type { GaugeCellProblem } from '../exchange/read-gauge-rows.ts'
import type { GaugeTableProblem } from '../exchange/read-gauge-table.ts'
import { wordProblem } from './quantity-problem.ts'

type Problem = GaugeCellProblem['problem'] | GaugeTableProblem['problem']

const figures = (value: number): string => `${Number(value.toPrecision(6))} mm`

/**
 * Why a row of a gauge table cannot stand, and what to do, in one sentence without its place. Rows are counted as given.
 * @example
 * gaugeProblem({ code: 'number-twice', text: '2/0', row: 3 }) // 'number "2/0" stands in row 4 already; correct one of the two.'
 */
export const gaugeProblem = (problem: Problem): string => {
  switch (problem.code) {
    case 'not-in-form':
      return 'it cannot be read as part of a gauge table; correct it.'
    case 'number-missing':
      return 'the number is missing; fill it in or clear the row.'
    case 'size-missing':
      return 'the size is missing; fill it in or clear the row.'
    case 'no-single-size':
      return 'a table gives one size for each number; write it without limits.'
    case 'no-gauge-number':
      return `"${problem.text}" is not the number of a gauge; write it as 12, 2/0 or 5½.`
    case 'number-twice':
      return `number "${problem.text}" stands in row ${problem.row + 1} already; correct one of the two.`
    case 'impossible-size':
      return `${figures(problem.mm)} is outside what is possible (${problem.possible[0]} to ${figures(problem.possible[1])}); check the figure and its unit.`
    case 'print-differs':
      return `"${problem.text}" does not come to ${figures(problem.mm)}; correct one of the two.`
    default:
      return wordProblem('size', problem)
  }
}

/**
 * Why a typed row of a gauge table cannot stand, with its place among the rows typed.
 * @example
 * gaugeRowProblem({ row: 2, cell: 'size', problem: { code: 'size-missing' } }) // 'Row 3: the size is missing; fill it in or clear the row.'
 */
export const gaugeRowProblem = ({ row, problem }: GaugeCellProblem): string =>
  `Row ${row + 1}: ${gaugeProblem(problem)}`
