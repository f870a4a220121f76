import { expect, it } from 'vitest'
import { sizesAgree } from '../../../../core/proofs/sizes-agree.ts'
import { sizeFindings } from '../../../../core/wording/findings/size-findings.ts'
import { caliberPrinted } from '../../../support/caliber-printed.ts'

const said = (fields: Readonly<Record<string, string | readonly string[]>>): string | undefined => {
  const judgement = sizesAgree.judge(caliberPrinted(fields))
  return 'working' in judgement ? sizeFindings[judgement.reason]?.(judgement) : judgement.outcome
}

it.each([
  [
    { diameterMm: ["17'''", '38.35'] },
    "The diameter is the same in both measures: 17''' (38.35 mm) and 38.35 mm meet within their printed rounding.",
  ],
  [
    { diameterMm: ["17'''", '37.0'] },
    "The diameter is stated as 17''' (38.35 mm) and as 37.0 mm: 1.35 mm apart, where the printed rounding explains 0.33 mm. Look both up again: one may be another unit, or measured over the flange.",
  ],
  [
    { diameterMm: ["17'''", '36.0'] },
    "The diameter is stated as 17''' (38.35 mm) and as 36.0 mm: 2.35 mm apart, where the printed rounding explains 0.33 mm. In English lines of a twelfth of an inch it would be 35.98 mm. Look both up again: one may be another unit, or measured over the flange.",
  ],
  [
    { shape: 'round', diameterMm: '26', lengthMm: '29' },
    'The movement is stated to be round, with the diameter 26 mm and the length 29 mm: 3 mm apart, where the printed rounding explains 1 mm. Correct the shape, or the size that is wrong.',
  ],
  [
    { shape: 'oval', lengthMm: '13,5', widthMm: "8½'''" },
    "Of the length 13,5 mm and the width 8½''' (19.17 mm) the length must be the longer. Exchange them, or correct the one that is wrong.",
  ],
  [
    { shape: 'tonneau', lengthMm: '25.5', widthMm: '18.6', diameterMm: '30.0' },
    'A diameter of 30.0 mm is stated beside a length and a width between which it does not lie. A shaped movement has no diameter: take it out, or correct the one that is wrong.',
  ],
  [
    { shape: 'baguette', lengthMm: '20', widthMm: '10' },
    'The length is 2 times the width; a baguette is usually 3 times as long as it is wide, or more. Check the sizes, or call the shape rectangular.',
  ],
  [{ shape: 'oval', lengthMm: '20', widthMm: '10' }, 'Diameter, length and width agree as far as they are stated.'],
])('%o: %s', (fields, sentence) => {
  expect(said(fields)).toBe(sentence)
})
