import { baseSentence } from '../base-sentence.ts'
import { sourcesSentence } from '../sources-sentence.ts'
import { detail, type Judged, type Sentences } from './judged.ts'

const years = (judgement: Judged) => `First year ${judgement.stated}, last year ${judgement.found}`

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
  'years-forward': (j) => `Made from ${j.stated} to ${j.found}.`,
  'years-uncertain': (j) =>
    `${years(j)}: the wrong way round, though no more than the years marked as uncertain allow. Look for a firm date.`,
  'years-backward': (j) =>
    `${years(j)}: a caliber cannot end before it begins. Look whether the two, or two digits, have changed places.`,
}
