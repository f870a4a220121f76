import { labelOf } from '../../record/label-of.ts'
import { figure } from '../figure.ts'
import { detail, found, type Judged, off, type Sentences, stated } from './judged.ts'

const label = (judgement: Judged, key: 'field' | 'other') => labelOf(detail(judgement, key)).toLowerCase()

/** A size as printed, with what it is in millimetres where it was printed otherwise. */
const sizeOf = (printed: string, mm: string) => (/^[\d.,]+$/.test(printed) ? `${printed} mm` : `${printed} (${mm} mm)`)
const first = (judgement: Judged) => sizeOf(detail(judgement, 'first'), stated(judgement))
const second = (judgement: Judged) => sizeOf(detail(judgement, 'second'), found(judgement))

const apart = (judgement: Judged) =>
  `${off(judgement)} mm apart, where the printed rounding explains ${figure(judgement.allowed ?? 0)} mm`

const bothSides = (judgement: Judged) =>
  `the ${label(judgement, 'field')} ${first(judgement)} and the ${label(judgement, 'other')} ${second(judgement)}`

const englishLines = (judgement: Judged) => {
  const mm = judgement.details?.englishLinesMm
  return mm === undefined ? '' : ` In English lines of a twelfth of an inch it would be ${figure(Number(mm))} mm.`
}

/** What the proof of the sizes finds. */
export const sizeFindings: Sentences = {
  'size-agrees': (j) =>
    j.details?.field === j.details?.other
      ? `The ${label(j, 'field')} is the same in both measures: ${first(j)} and ${second(j)} meet within their printed rounding.`
      : 'Diameter, length and width agree as far as they are stated.',
  'size-units-differ': (j) =>
    `The ${label(j, 'field')} is stated as ${first(j)} and as ${second(j)}: ${apart(j)}.${englishLines(j)} ` +
    'Look both up again: one may be another unit, or measured over the flange.',
  'round-differs': (j) =>
    `The movement is stated to be round, with ${bothSides(j)}: ${apart(j)}. Correct the shape, or the size that is wrong.`,
  'sides-exchanged': (j) =>
    `Of ${bothSides(j)} the length must be the longer. Exchange them, or correct the one that is wrong.`,
  'diameter-beside-sides': (j) =>
    `A ${label(j, 'field')} of ${first(j)} is stated beside a length and a width between which it does not lie. A shaped ` +
    'movement has no diameter: take it out, or correct the one that is wrong.',
  'baguette-short': (j) =>
    `The length is ${detail(j, 'ratio')} times the width; a baguette is usually ${detail(j, 'baguetteUsual')} times as long ` +
    'as it is wide, or more. Check the sizes, or call the shape rectangular.',
}
