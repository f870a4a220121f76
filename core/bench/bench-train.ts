import type Fraction from 'fraction.js'
import { beatRate } from '../formulas/beat-rate.ts'
import { hasFourthArbor } from '../formulas/fourth-arbor.ts'
import { gearRatio } from '../formulas/gear-ratio.ts'
import { type Stage, stageCounts, stagesFromCentre } from '../formulas/train-stages.ts'
import { asWritten, exactValue } from '../proofs/exact-value.ts'
import type { WorkingStep } from '../proofs/proof.ts'
import { stagesToHand } from '../proofs/seconds-hand-turns-once-a-minute.ts'
import { countsWhere, fractionsOf } from '../proofs/train-working.ts'
import type { Caliber, CaliberValues } from '../record/caliber.ts'
import { type CountKey, countKeys, isCountKey } from '../trains/cuttable-counts.ts'

/** Counts made on the bench, of some parts or all. */
export type CountedTeeth = Readonly<Partial<Record<CountKey, number>>>

/** What a train gives: the rate for which it is cut, and the turns of its seconds hand where it has one. */
export interface TrainRate {
  readonly vph: Fraction
  readonly working: WorkingStep
  /** Turns of the arbor of the seconds hand in an hour of the minute hand; null without a seconds hand, or where a count lacks. */
  readonly secondsTurns: Fraction | null
}

/** The train of a caliber, whatever its counts are: the pairs, the hours of its centre arbor, the way to the seconds hand. */
export interface BenchTrain {
  /** The counts that the rate follows from, in the order of the power flow. */
  readonly keys: readonly CountKey[]
  /** The rate with these counts, or null where one is missing. */
  readonly rateOf: (values: CaliberValues) => TrainRate | null
}

const keysOf = (stages: readonly Stage[]): CountKey[] =>
  [...stages.flatMap(({ wheel, pinion }) => [wheel, pinion]), 'escapeTeeth' as const].filter(isCountKey)

/**
 * The train of a caliber as it can be counted on the bench. Its arbors are those of the specification, with the gaps
 * filled by what was counted.
 */
export const benchTrain = (
  { values, readings }: Pick<Caliber, 'values' | 'readings'>,
  counted: CountedTeeth,
): BenchTrain => {
  const known: CaliberValues = { ...counted, ...values }
  const stages = stagesFromCentre(known, hasFourthArbor(known) !== false)
  const toHand = known.secondsDisplay === undefined || known.secondsDisplay === 'none' ? undefined : stagesToHand(known)
  const { hoursPerCentreTurn } = known
  const hours =
    hoursPerCentreTurn === undefined ? undefined : exactValue(readings, 'hoursPerCentreTurn', hoursPerCentreTurn)

  const handTurns = (now: CaliberValues): Fraction | null => {
    const counts = toHand && stageCounts(now, toHand)
    if (!counts) return null
    const ratio = gearRatio(counts.wheels, counts.pinions)
    return hours === undefined ? ratio : ratio.div(hours)
  }

  const used = new Set(keysOf(stages))
  return {
    keys: countKeys.filter((key) => used.has(key)),
    rateOf: (now) => {
      const counts = stageCounts(now, stages)
      const { escapeTeeth } = now
      if (counts === null || escapeTeeth === undefined) return null
      const { wheels, pinions } = counts
      const vph = beatRate(wheels, pinions, escapeTeeth, hours)
      const slow = hours === undefined ? '' : ` ÷ ${hours.toFraction(true)}`
      return {
        vph,
        working: {
          formula: `${fractionsOf(wheels, pinions)} × 2 × ${escapeTeeth}${slow}`,
          where: {
            ...countsWhere(now, stages),
            escapeTeeth,
            ...(hoursPerCentreTurn === undefined ? {} : { hoursPerCentreTurn }),
          },
          gives: asWritten(vph),
        },
        secondsTurns: handTurns(now),
      }
    },
  }
}
