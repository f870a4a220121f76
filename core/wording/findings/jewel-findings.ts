import { jewelsSentence } from '../jewels-sentence.ts'
import { found, type Judged, off, type Sentences, stated } from './judged.ts'

const tally = (judgement: Judged) => `${stated(judgement)} jewels are stated and ${found(judgement)} are listed`

/** What the proofs of the jewels find. */
export const jewelFindings: Sentences = {
  'jewels-agree': (j) => `The jewels listed come to the stated ${stated(j)}.`,
  'jewels-short': (j) => `${tally(j)}: ${off(j)} too few. Look for a place that is not listed, or correct the total.`,
  'jewels-over': (j) => `${tally(j)}: ${off(j)} too many. Look for a place listed twice, or correct the total.`,
  'jewels-paired': () => 'The jewels sit where such a movement has a place for them.',
  'jewels-misplaced': (j) => jewelsSentence(j, 'Correct the list of jewels, or the escapement and seconds display.'),
  'jewels-unusual': (j) =>
    jewelsSentence(j, 'It may be so: look at the movement, and overrule this with a remark where it is.'),
}
