import type { Judgement } from '../../proofs/proof.ts'
import { figure } from '../figure.ts'

/** A judgement that came to a verdict, as the sentences read it. */
export type Judged = Extract<Judgement, { outcome: 'agrees' | 'disagrees' | 'doubtful' }>

/** The sentence of each reason that a family of proofs gives. */
export type Sentences = Readonly<Record<string, (judgement: Judged) => string>>

/** A detail as it is read: figures rounded to two decimals, nothing where it is not given. */
export const detail = (judgement: Judged, key: string): string => {
  const value = judgement.details?.[key]
  return value === undefined ? '' : typeof value === 'number' ? figure(value, 2) : value
}

/** The figure that is stated. */
export const stated = (judgement: Judged, decimals = 2): string => figure(judgement.stated ?? 0, decimals)

/** The figure that was found. */
export const found = (judgement: Judged, decimals = 2): string => figure(judgement.found ?? 0, decimals)

/** How far the two lie apart, whichever is more. */
export const off = (judgement: Judged, decimals = 2): string => figure(Math.abs(judgement.difference ?? 0), decimals)

/** What to be told before a barrel is opened. */
export const openBarrel =
  'Let the mainspring down fully before opening the barrel, protect your eyes, and follow the maker’s specification.'
