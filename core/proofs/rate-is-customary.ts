import type Fraction from 'fraction.js'
import { plain } from '../quantities/plain.ts'
import { knownRate, nearestCustomary } from '../trains/customary-rates.ts'
import { defineProof } from './define-proof.ts'
import { asWritten, exactValue } from './exact-value.ts'
import type { WorkingStep } from './proof.ts'
import { rateOfTrain } from './rate-of-train.ts'
import { rateStep } from './train-working.ts'

/** The year after which a rate of old watches is remarked on. */
const lastOldYear = 1900

const used = [
  'beatRateVph',
  'centreWheel',
  'thirdPinion',
  'thirdWheel',
  'fourthPinion',
  'fourthWheel',
  'fifthPinion',
  'fifthWheel',
  'escapePinion',
  'escapeTeeth',
  'hoursPerCentreTurn',
  'firstYear',
] as const

const outcomes = {
  'rate-customary': 'agrees',
  'rate-of-old': 'agrees',
  'rate-outdated': 'doubtful',
  'rate-uncommon': 'doubtful',
} as const

const beatsStep = (rate: Fraction): WorkingStep => ({
  formula: `${asWritten(rate)} ÷ 3600`,
  where: { beatRateVph: rate.valueOf() },
  gives: asWritten(rate.div(3600)),
  unit: 'beats a second',
})

/** The rate of the train, or the stated one where the counts give none, is one that the trade cuts. */
export const rateIsCustomary = defineProof({
  id: 'rate-is-customary',
  title: 'Rate is customary',
  meaning:
    'The train gives one of the beat rates that the trade cuts; another is remarked on and never called wrong, since trains were once cut to any rate.',
  needs: [],
  uses: used,
  lists: [],
  tolerance: {
    allows: 'nothing: exactly a known rate; any other is doubtful at most, and so is a rate of old after 1900',
    why:
      'Whole counts give a rate exactly, and one wrong count nearly always gives a rate that nobody cut. Yet before rates ' +
      'settled each maker chose his own, Derham’s 15 960 among them, so a rate alone proves nothing wrong. The year is ' +
      'our choice.',
  },
  source:
    'common practice; W. Derham, The Artificial Clock-maker, 1696, pp. 19–30 and 110–123; Encyclopaedia Britannica, 4th ed., ' +
    '1810, “Clock” and “Science, Amusements of”',
  validity: 'Watches. Clocks with a pendulum are cut to many rates more.',
  reasons: ['rate-customary', 'rate-of-old', 'rate-outdated', 'rate-uncommon'],
  judge: (values, { readings }) => {
    const { beatRateVph, firstYear } = values
    const train = rateOfTrain(values, readings)
    const stated = beatRateVph === undefined ? null : exactValue(readings, 'beatRateVph', beatRateVph)
    const exact = train?.exact ?? stated
    if (exact === null) return { outcome: 'cannot-check', missing: ['beatRateVph'] }
    const found = exact.valueOf()
    const known = exact.d === 1n ? knownRate(Number(exact.n)) : undefined
    const nearest = nearestCustomary(found)
    const reason =
      known === undefined
        ? 'rate-uncommon'
        : known.of === 'now'
          ? 'rate-customary'
          : (firstYear ?? lastOldYear) > lastOldYear
            ? 'rate-outdated'
            : 'rate-of-old'
    return {
      outcome: outcomes[reason],
      stated: null,
      found,
      unit: 'vph',
      difference: known === undefined ? plain(found - nearest) : 0,
      allowed: 0,
      get working() {
        return train === null ? [beatsStep(exact)] : [rateStep(values, train), beatsStep(exact)]
      },
      reason,
      details: {
        of: train === null ? 'stated' : 'train',
        nearest,
        ...(known === undefined ? {} : { source: known.source }),
      },
    }
  },
})
