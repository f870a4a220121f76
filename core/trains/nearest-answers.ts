import Fraction from 'fraction.js'
import { dailyDifference } from '../formulas/daily-difference.ts'
import type { CaliberValues } from '../record/caliber.ts'
import type { CountKey } from './cuttable-counts.ts'
import { boundBy, relationGives, searchRule, type TrainRelation } from './train-relations.ts'
import { type SearchLimits, type SearchRange, wholeNumberAnswers } from './whole-number-search.ts'

/** Whole numbers that come near to what is stated, with how far off they are. */
export interface NearestAnswer {
  readonly counts: Readonly<Partial<Record<CountKey, number>>>
  readonly rate: Fraction | null
  /** Seconds a day by which the train's rate runs ahead of the stated one; null where no rate is bound. */
  readonly rateErrorSecondsPerDay: number | null
  /** Seconds a day by which a seconds hand runs ahead; null where none is bound by the counts. */
  readonly secondsHandErrorSecondsPerDay: number | null
  /** Turns of the minute hand to one of the hour hand; null where the motion work is not looked for. */
  readonly hourHandTurns: Fraction | null
}

const most = 5
/** Shares by which what is stated is let go, until something is found. */
const shares = [0.003, 0.01, 0.03, 0.1, 0.3, 1]
const limits: SearchLimits = { mostTried: 100_000, mostAnswers: 20_000 }

const widened = (relation: TrainRelation, share: number): TrainRelation => ({
  ...relation,
  low: relation.low.mul(new Fraction(1 / (1 + share))),
  high: relation.high.mul(new Fraction(1 + share)),
})

const offOf = (relation: TrainRelation, counts: CaliberValues): number => {
  const gives = relationGives(relation, counts)
  return gives === null || relation.stated === null ? 0 : dailyDifference(gives.valueOf(), relation.stated.valueOf())
}

/**
 * The whole numbers that come nearest to what is stated, five at most: first those that keep seconds hand and motion
 * work exact and miss the rate alone, and only where there are none, those that miss something else too.
 */
export const nearestAnswers = (
  values: CaliberValues,
  ranges: readonly SearchRange<CountKey>[],
  relations: readonly TrainRelation[],
): readonly NearestAnswer[] => {
  const unknown = new Set(ranges.map(({ key }) => key))
  const binding = relations.filter((relation) => boundBy(relation, unknown).length > 0)
  const rate = binding.find(({ statement }) => statement === 'rate')
  const seconds = binding.find(({ statement }) => statement === 'seconds')
  const hourHand = binding.find(({ statement }) => statement === 'hour-hand')
  const ways: ((relation: TrainRelation, share: number) => TrainRelation)[] = [
    ...(rate
      ? [(relation: TrainRelation, share: number) => (relation === rate ? widened(relation, share) : relation)]
      : []),
    widened,
  ]
  for (const widen of ways)
    for (const share of shares) {
      const rules = binding.map((relation) => searchRule(widen(relation, share), values, unknown))
      const { answers } = wholeNumberAnswers(ranges, rules, limits)
      if (answers.length === 0) continue
      return answers
        .map((counts) => {
          const all = { ...values, ...counts }
          const off = [rate, seconds, hourHand].map((relation) => (relation ? offOf(relation, all) : null))
          const [rateErrorSecondsPerDay = null, secondsHandErrorSecondsPerDay = null] = off
          return {
            counts,
            rate: rate ? relationGives(rate, all) : null,
            rateErrorSecondsPerDay,
            secondsHandErrorSecondsPerDay,
            hourHandTurns: hourHand ? relationGives(hourHand, all) : null,
            far: off.reduce<number>((sum, one) => sum + Math.abs(one ?? 0), 0),
          }
        })
        .sort((one, other) => one.far - other.far)
        .slice(0, most)
        .map(({ far: _, ...answer }) => answer)
    }
  return []
}
