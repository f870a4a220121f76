import { ligneMm } from '../quantities/length-units.ts'
import { onPaper } from '../quantities/on-paper.ts'
import { plain } from '../quantities/plain.ts'
import type { Reading } from '../record/reading.ts'
import { readingsMeet } from '../record/reading-conflicts.ts'
import { defineProof } from './define-proof.ts'
import { exactValue, sideOf } from './exact-value.ts'
import { measuringShare } from './measuring-share.ts'
import type { WorkingStep } from './proof.ts'
import { pairsOfUnits, type SizeKey, type SizePair, sizeKeys, sizeReading } from './size-pairs.ts'

const baguetteLeast = 2.5
const baguetteUsual = 3
type Outcome = 'agrees' | 'doubtful' | 'disagrees'
type Reason =
  | 'size-agrees'
  | 'size-units-differ'
  | 'round-differs'
  | 'sides-exchanged'
  | 'diameter-beside-sides'
  | 'baguette-short'

/** One comparison, with what it came to. */
interface Compared extends SizePair {
  readonly outcome: Outcome
  readonly reason: Reason
}

const gravity: Readonly<Record<Outcome, number>> = { agrees: 0, doubtful: 1, disagrees: 2 }

/** Two figures within their printed rounding agree; as little beyond as measuring explains is doubtful. */
const compare = (pair: SizePair, reason: Reason): Compared => {
  const { first, second } = pair
  if (readingsMeet(first, second)) return { ...pair, outcome: 'agrees', reason: 'size-agrees' }
  const share = plain(Math.abs(second.value - first.value) / first.value)
  return { ...pair, outcome: share > measuringShare ? 'disagrees' : 'doubtful', reason }
}

/** A size printed in lignes or inches, turned into millimetres as on paper. */
const conversion = (key: SizeKey, { printed, value, quantity }: Reading<number>): readonly WorkingStep[] => {
  if (quantity === undefined || !['ligne', 'douzieme', 'inch'].includes(quantity.unit)) return []
  const where = { field: key, printed }
  const { exact } = quantity
  if (quantity.unit === 'inch')
    return [{ formula: `${onPaper(exact.div('25.4').valueOf())} × 25.4`, where, gives: value }]
  const lignes = exact.div(ligneMm)
  const written = lignes.d <= 12n ? lignes.toFraction(true) : String(onPaper(lignes.valueOf()))
  return [{ formula: `${written} × ${ligneMm.toFraction()}`, where, gives: value }]
}

const englishLineMm = 25.4 / 12

/** What a size in lignes would measure in English lines, where that is what the other reading says. */
const asEnglishLines = ({ first, second }: SizePair): number | null => {
  const [french, other] = first.quantity?.unit === 'ligne' ? [first, second] : [second, first]
  if (french.quantity?.unit !== 'ligne') return null
  const mm = french.quantity.exact.div(ligneMm).valueOf() * englishLineMm
  return Math.abs(mm - other.value) <= rounding(first) + rounding(second) ? mm : null
}

const rounding = ({ quantity }: Reading): number => quantity?.halfStep ?? 0

const stepsOf = ({ key, otherKey, first, second }: SizePair): readonly WorkingStep[] => [
  ...conversion(key, first),
  ...conversion(otherKey, second),
  {
    formula: `${onPaper(second.value, 3)} − ${onPaper(first.value, 3)}`,
    where: { field: key, other: otherKey, first: first.printed, second: second.printed },
    gives: plain(second.value - first.value),
  },
  ...(rounding(first) + rounding(second) === 0
    ? []
    : [
        {
          formula: `${onPaper(rounding(first))} + ${onPaper(rounding(second))}`,
          where: { rounding: 'half of the last digit of each' },
          gives: plain(rounding(first) + rounding(second)),
        },
      ]),
]

/** Readings of the size in different units, and diameter, length and width, fit together and suit the shape. */
export const sizesAgree = defineProof({
  id: 'sizes-agree',
  title: 'Sizes agree',
  meaning:
    'The size of the movement is the same in lignes, millimetres and inches, and diameter, length and width suit the shape; where they do not, a size is misprinted or belongs to another shape.',
  needs: [],
  uses: ['shape', ...sizeKeys],
  lists: [],
  appliesTo: (values, readings) =>
    values.lengthMm !== undefined || values.widthMm !== undefined || pairsOfUnits(readings).length > 0,
  tolerance: {
    allows:
      'half of the last digit printed on either side (a whole or quarter ligne stands for an eighth either way), or the ' +
      'limits printed; otherwise a difference of up to 1 % is doubtful; a baguette shorter than 2.5 times its width is doubtful',
    why:
      'A size in lignes is rounded far more coarsely than one in millimetres, so the two are compared by what each can ' +
      'stand for. This proof compares one size in two measures, and one size with another; readings of one field in the same ' +
      'measure are compared by the proof of the sources alone, which also names the sources of those here. A baguette is ' +
      'three times as long as wide or more by custom, from memory. 1 % and 2.5 are our choice.',
  },
  source:
    '1 ligne = 31250/13853 mm: law of 19 frimaire year VIII, as quoted in GNU units 2.22, definitions.units; common practice for the rest',
  validity: 'Sizes of the movement where it sits in the case. What flange or dial measure is another size.',
  reasons: [
    'size-agrees',
    'size-units-differ',
    'round-differs',
    'sides-exchanged',
    'diameter-beside-sides',
    'baguette-short',
  ],
  judge: (values, { readings }) => {
    const caliber = { values, readings }
    const diameter = sizeReading(caliber, 'diameterMm')
    const length = sizeReading(caliber, 'lengthMm')
    const width = sizeReading(caliber, 'widthMm')
    const compared: Compared[] = pairsOfUnits(readings).map((pair) => compare(pair, 'size-units-differ'))
    const add = (key: SizeKey, first: typeof diameter, otherKey: SizeKey, second: typeof diameter, reason: Reason) => {
      if (first !== undefined && second !== undefined) compared.push(compare({ key, otherKey, first, second }, reason))
    }

    if (values.shape === 'round') {
      add('diameterMm', diameter, 'lengthMm', length, 'round-differs')
      add('diameterMm', diameter, 'widthMm', width, 'round-differs')
      add('lengthMm', length, 'widthMm', width, 'round-differs')
    } else if (length !== undefined && width !== undefined) {
      const sides = { key: 'lengthMm', otherKey: 'widthMm', first: length, second: width } as const
      if (width.value > length.value) compared.push(compare(sides, 'sides-exchanged'))
      else compared.push({ ...sides, outcome: 'agrees', reason: 'size-agrees' })
      if (diameter !== undefined) {
        const within = diameter.value > width.value && diameter.value < length.value
        const meets = within || readingsMeet(diameter, length) || readingsMeet(diameter, width)
        compared.push({
          key: 'diameterMm',
          otherKey: 'lengthMm',
          first: diameter,
          second: length,
          outcome: meets ? 'agrees' : 'doubtful',
          reason: meets ? 'size-agrees' : 'diameter-beside-sides',
        })
      }
      const exactly = () =>
        exactValue(readings, 'lengthMm', length.value).div(exactValue(readings, 'widthMm', width.value))
      if (values.shape === 'baguette' && sideOf(length.value / width.value, baguetteLeast, exactly) < 0)
        compared.push({ ...sides, outcome: 'doubtful', reason: 'baguette-short' })
    }

    const [first] = compared
    if (first === undefined) {
      if (values.shape === 'round') return { outcome: 'cannot-check', missing: ['diameterMm'] }
      return { outcome: 'cannot-check', missing: [length === undefined ? 'lengthMm' : 'widthMm'] }
    }
    const worst = compared.reduce((most, next) => (gravity[next.outcome] > gravity[most.outcome] ? next : most), first)
    // Length and width may lie apart as they like, so only a size that is stated twice has a greatest difference.
    const mustMeet = worst.key === worst.otherKey || values.shape === 'round'
    const lines = worst.reason === 'size-units-differ' ? asEnglishLines(worst) : null
    const seen = new Map(compared.flatMap(stepsOf).map((step) => [step.formula, step]))
    return {
      outcome: worst.outcome,
      stated: worst.first.value,
      found: worst.second.value,
      unit: 'mm',
      difference: plain(worst.second.value - worst.first.value),
      allowed: mustMeet ? plain(rounding(worst.first) + rounding(worst.second)) : null,
      working: [...seen.values()],
      reason: worst.reason,
      details: {
        field: worst.key,
        other: worst.otherKey,
        first: worst.first.printed,
        second: worst.second.printed,
        ...(lines !== null && { englishLinesMm: lines }),
        ...(length !== undefined && width !== undefined && { ratio: length.value / width.value, baguetteUsual }),
      },
      fields: [...new Set(compared.flatMap(({ key, otherKey }) => [key, otherKey]))],
    }
  },
})
