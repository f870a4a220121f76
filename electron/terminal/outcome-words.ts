import type { Outcome } from '../../core/proofs/proof.ts'

/** A shape and a word for each outcome, so that no colour is needed. */
export const outcomeWords: Readonly<Record<Outcome, string>> = {
  agrees: '= agrees',
  disagrees: '≠ disagrees',
  doubtful: '? doubtful',
  'cannot-check': '… cannot check',
  'outside-range': '– outside range',
}
