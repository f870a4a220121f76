import type { WorkingStep } from '../proofs/proof.ts'
import { figure } from './figure.ts'

/** Thousands stand apart in the sum as they do in what it gives. */
const apart = (formula: string): string =>
  formula.replaceAll(/(?<![\d./])\d{5,}(?![\d/])/g, (digits) => figure(Number(digits), 0))

/**
 * A line of working as it is written on paper: the sum, then what it gives.
 * @example
 * workingLine({ formula: '80/10 × 75/10', where: {}, gives: 60 }) // '80/10 × 75/10 = 60'
 */
export const workingLine = ({ formula, gives, unit }: Pick<WorkingStep, 'formula' | 'gives' | 'unit'>): string =>
  `${apart(formula)} = ${typeof gives === 'number' ? figure(gives, 3) : gives}${unit === undefined ? '' : ` ${unit}`}`
