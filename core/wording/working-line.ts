import type { WorkingStep } from '../proofs/proof.ts'
import { figure } from './figure.ts'

/**
 * A line of working as it is written on paper: the sum, then what it gives.
 * @example
 * workingLine({ formula: '80/10 × 75/10', where: {}, gives: 60 }) // '80/10 × 75/10 = 60'
 */
export const workingLine = ({ formula, gives, unit }: Pick<WorkingStep, 'formula' | 'gives' | 'unit'>): string =>
  `${formula} = ${typeof gives === 'number' ? figure(gives, 3) : gives}${unit === undefined ? '' : ` ${unit}`}`
