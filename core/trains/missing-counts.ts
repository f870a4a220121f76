import type Fraction from 'fraction.js'
import { stagesFromCentre, stagesToCentre } from '../formulas/train-stages.ts'
import type { WorkingStep } from '../proofs/proof.ts'
import type { Caliber, CaliberValues } from '../record/caliber.ts'
import { absentCounts, arborGuesses } from './absent-counts.ts'
import { type AnswerRemark, answerRemarks } from './answer-remarks.ts'
import { relationWorking } from './answer-working.ts'
import { customaryCost } from './customary-cost.ts'
import { type CountKey, countKeys, isCountKey } from './cuttable-counts.ts'
import { type DecidingMeasurement, decidingMeasurements } from './deciding-measurement.ts'
import { cuttableRanges, type MissingTry, tryReading, type UnboundCount } from './missing-question.ts'
import { type NearestAnswer, nearestAnswers } from './nearest-answers.ts'
import { relationGives, type Statement, trainRelations } from './train-relations.ts'

type Counts = Readonly<Partial<Record<CountKey, number>>>

/** Whole-number counts that fit everything stated. */
export interface MissingSolution {
  readonly counts: Counts
  /** The rate that the train then gives; null where other counts of it are not known. */
  readonly rate: Fraction | null
  readonly remarks: readonly AnswerRemark[]
  readonly working: readonly WorkingStep[]
}

/** What was found of the missing counts of a caliber. */
export interface MissingAnswer {
  /** The counts looked for. */
  readonly unknown: readonly CountKey[]
  /** Counts asked for that nothing stated binds; the rest were looked for without them. */
  readonly unbound: readonly UnboundCount[]
  /** What is stated that binds them. */
  readonly rests: readonly Statement[]
  /** All answers, the most customary first. */
  readonly solutions: readonly MissingSolution[]
  /** Where no whole numbers fit, those that come nearest; five at most. */
  readonly nearest: readonly NearestAnswer[]
  /** What would decide between several answers. */
  readonly decide: readonly DecidingMeasurement[]
  /** True where every cuttable count was looked at. */
  readonly complete: boolean
}

const withoutKeys = (values: CaliberValues, keys: readonly CountKey[]): CaliberValues =>
  Object.fromEntries(Object.entries(values).filter(([key]) => !isCountKey(key) || !keys.includes(key)))

const pairsOf = (values: CaliberValues, fourthArbor: boolean): readonly (readonly [CountKey, CountKey])[] => [
  ...[...stagesToCentre(values), ...stagesFromCentre(values, fourthArbor)].map(
    ({ wheel, pinion }) => [wheel, pinion] as const,
  ),
  ['sweepDriver', 'sweepPinion'],
  ['cannonPinion', 'minuteWheel'],
  ['minutePinion', 'hourWheel'],
]

const answered = ({ question, found }: MissingTry): MissingAnswer => {
  const { caliber, unknown, unbound, relations, fourthArbor } = question
  const { values, readings, lists } = caliber
  const set = new Set(unknown)
  const ofTrain = relations.some(({ statement }) => statement === 'rate')
  // The train's own rate, also where the counts found do not bear on it; every answer has the same counts.
  const placed: CaliberValues = { ...values, ...found.answers[0] }
  const ownRate = trainRelations({ values: placed, readings, lists }, [], fourthArbor).find(
    ({ statement }) => statement === 'rate',
  )
  const shown = relations.filter(({ statement }) => statement !== 'sizes' && statement !== 'steepness')
  const solutions = found.answers
    .map((counts) => {
      const all: CaliberValues = { ...values, ...counts }
      const rate = ownRate ? relationGives(ownRate, all) : null
      return {
        counts,
        rate,
        cost: customaryCost(all, lists, set, fourthArbor),
        remarks: answerRemarks({ values: all, fourthArbor, rate }, { lists, values }, set, ofTrain),
        working: shown.flatMap((relation) => relationWorking(relation, all) ?? []),
      }
    })
    .sort((one, other) => one.cost - other.cost)
    .map(({ cost: _, ...solution }) => solution)
  const stated = Object.fromEntries(countKeys.flatMap((key) => (values[key] === undefined ? [] : [[key, values[key]]])))
  return {
    unknown,
    unbound,
    rests: [...new Set(relations.map(({ statement }) => statement))].filter((each) => each !== 'steepness'),
    solutions,
    nearest:
      solutions.length > 0 || unknown.length === 0 ? [] : nearestAnswers(values, cuttableRanges(unknown), relations),
    // Of answers that are not all there, none can be ruled out.
    decide: found.complete
      ? decidingMeasurements(
          solutions.map(({ counts }) => counts),
          unknown,
          stated,
          pairsOf(placed, fourthArbor),
        )
      : [],
    complete: found.complete,
  }
}

const nothingMissing: MissingAnswer = {
  unknown: [],
  unbound: [],
  rests: [],
  solutions: [],
  nearest: [],
  decide: [],
  complete: true,
}

/** A tenth of a day. */
const closeSeconds = 8640
const isClose = ({ rateErrorSecondsPerDay: off }: NearestAnswer): boolean =>
  off !== null && Math.abs(off) < closeSeconds

/**
 * The missing counts of a caliber: all whole numbers, each within what is cut, that fit the stated beat rate to half a
 * vibration and the seconds hand, the motion work and the measured depths.
 *
 * `unknown` names the counts to look for, whether stated or not, as for a wheel that is lost; without it those that are
 * absent and needed are looked for. Where neither count of a fourth arbor is known, a train of two pairs is tried first.
 */
export const findMissingCounts = (
  { values, readings, lists }: Pick<Caliber, 'values' | 'readings' | 'lists'>,
  unknown?: readonly CountKey[],
): MissingAnswer => {
  const rest = unknown === undefined ? values : withoutKeys(values, unknown)
  const caliber = { values: rest, readings, lists }
  const tries: MissingTry[] = []
  for (const fourthArbor of arborGuesses(rest, unknown ?? [])) {
    const wanted = unknown ?? absentCounts(rest, fourthArbor)
    if (wanted.length === 0) continue
    const tried = tryReading(caliber, wanted, fourthArbor)
    if (tried.found.answers.length > 0) return answered(tried)
    tries.push(tried)
  }
  const [first, last] = [tries[0], tries.at(-1)]
  if (first === undefined || last === undefined) return nothingMissing
  // A train of two pairs that all but gives its rate is one, though no whole numbers fit it.
  if (last.question.unknown.length === 0) {
    const near = answered(first)
    if (near.nearest.some(isClose)) return near
  }
  return answered(last)
}
