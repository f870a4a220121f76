import type { Standing } from '../proofs/standing.ts'
import { figure } from './figure.ts'

const words: Readonly<Record<Standing, readonly [one: string, many: string]>> = {
  wrong: ['wrong', 'wrong'],
  doubtful: ['doubtful', 'doubtful'],
  accepted: ['accepted', 'accepted'],
  agrees: ['agrees', 'agree'],
  'cannot-check': ['cannot be checked', 'cannot be checked'],
}

/** The word for how a finding stands. */
export const standingWord = (standing: Standing): string => words[standing][0]

/**
 * So many findings that stand so.
 * @example
 * countStanding('agrees', 27) // '27 agree'
 */
export const countStanding = (standing: Standing, count: number): string =>
  `${figure(count)} ${words[standing][count === 1 ? 0 : 1]}`
