import { baseSentence } from '../base-sentence.ts'
import { sourcesSentence } from '../sources-sentence.ts'
import { detail, type Sentences } from './judged.ts'

/** What the proofs of sources and bases find. */
export const recordFindings: Sentences = {
  'readings-agree': (j) =>
    j.details?.fields === 1
      ? 'The readings of the field with more than one meet within their printed rounding.'
      : `In ${detail(j, 'fields')} fields with more than one reading they meet within their printed rounding.`,
  'readings-differ': sourcesSentence,
  'base-kept': (j) => `Train and barrel are stated as those of the base, ${detail(j, 'basedOn')}.`,
  'base-unstated': (j) => `Train and barrel are taken from the base, ${detail(j, 'basedOn')}.`,
  'base-differs': baseSentence,
}
