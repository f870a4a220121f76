import type { StockSpringProblem } from '../exchange/read-stock-spring.ts'
import { wordProblem } from './quantity-problem.ts'

/**
 * What of a spring cannot be read, and what to do, in one sentence.
 * @example
 * stockSpringProblem({ key: 'heightMm', label: 'Spring height', problem: { code: 'missing' } }) // 'Spring height is missing; fill it in.'
 */
export const stockSpringProblem = ({ label, problem }: StockSpringProblem): string => {
  switch (problem.code) {
    case 'missing':
      return `${label} is missing; fill it in.`
    case 'not-a-count':
      return `${label}: "${problem.text}" is not a whole number; give how many there are.`
    case 'not-text':
      return `${label} cannot be read; give it as a text or a number.`
    default:
      return wordProblem(label, problem)
  }
}
