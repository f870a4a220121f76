import { found, type Judged, off, type Sentences, stated } from './judged.ts'

const tally = (judgement: Judged) => `${stated(judgement)} jewels are stated and ${found(judgement)} are listed`

/** What the proofs of the jewels find. */
export const jewelFindings: Sentences = {
  'jewels-agree': (j) => `The jewels listed come to the stated ${stated(j)}.`,
  'jewels-short': (j) => `${tally(j)}: ${off(j)} too few. Look for a place that is not listed, or correct the total.`,
  'jewels-over': (j) => `${tally(j)}: ${off(j)} too many. Look for a place listed twice, or correct the total.`,
}
