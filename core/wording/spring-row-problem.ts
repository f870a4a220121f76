import type { RefusedSpringRow } from '../exchange/read-spring-table.ts'
import { stockSpringProblem } from './stock-spring-problem.ts'

/**
 * Why a row of a list of springs is not taken over, and what to do, in one sentence.
 * @example
 * springRowProblem({ key: 'supplierRef', label: 'Supplier’s number', problem: { code: 'said-twice', row: 4 } }) // 'Supplier’s number stands in row 4 already; give each spring one of its own.'
 */
export const springRowProblem = (problem: RefusedSpringRow['problem']): string => {
  const { problem: found } = problem
  if (found.code === 'said-twice')
    return `Supplier’s number stands in row ${found.row} already; give each spring one of its own.`
  if (found.code === 'not-so-many')
    return `Sizes: "${found.text}" does not hold the ${found.wanted} figures of the order chosen; choose another order or correct the cell.`
  if (found.code === 'not-a-choice')
    return `${problem.label}: "${found.text}" is not a word that Lignebook knows; say above what it means in this list, or correct the cell.`
  if (found.code === 'unreadable')
    return `${problem.label}: "${found.text}" cannot be read as a size; correct the cell, or say above what its column holds.`
  return stockSpringProblem({ ...problem, problem: found })
}
