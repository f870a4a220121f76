import type { Outcome } from '../proofs/proof.ts'

/** The word and the mark for each outcome, so that none is told by colour alone. */
export const outcomeWords = {
  agrees: { word: 'agrees', mark: '✓' },
  doubtful: { word: 'doubtful', mark: '△' },
  disagrees: { word: 'disagrees', mark: '✕' },
  'cannot-check': { word: 'cannot check', mark: '○' },
  'outside-range': { word: 'outside range', mark: '◇' },
} as const satisfies Record<Outcome, { word: string; mark: string }>
