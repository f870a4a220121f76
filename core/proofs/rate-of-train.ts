import type Fraction from 'fraction.js'
import { beatRate } from '../formulas/beat-rate.ts'
import { hasFourthArbor } from '../formulas/fourth-arbor.ts'
import { type Stage, stageCounts, stagesFromCentre } from '../formulas/train-stages.ts'
import type { Caliber, CaliberValues } from '../record/caliber.ts'
import { exactValue } from './exact-value.ts'

/** The beat rate that the counts of a caliber give, with what it was worked out from. */
export interface TrainRate {
  readonly exact: Fraction
  readonly stages: readonly Stage[]
  readonly wheels: readonly number[]
  readonly pinions: readonly number[]
  readonly escapeTeeth: number
  /** Hours per turn of the centre arbor, where it does not turn once an hour. */
  readonly hours: Fraction | undefined
}

/** The pairs from the centre wheel to the escape pinion, without a fourth arbor only where the train gives the stated rate so. */
export const stagesOfRate = (values: CaliberValues): readonly Stage[] =>
  stagesFromCentre(values, hasFourthArbor(values) !== false)

interface Worked {
  readonly values: CaliberValues
  readonly readings: Caliber['readings']
  readonly rate: TrainRate | null
}

/** The train looked at last: proofs of one caliber, one after the other, ask for the same. */
let last: Worked | undefined

/** The exact beat rate of the counts; null where one of them is not stated. */
export const rateOfTrain = (values: CaliberValues, readings: Caliber['readings']): TrainRate | null => {
  if (last?.values !== values || last.readings !== readings) last = { values, readings, rate: worked(values, readings) }
  return last.rate
}

const worked = (values: CaliberValues, readings: Caliber['readings']): TrainRate | null => {
  const { escapeTeeth, hoursPerCentreTurn } = values
  const stages = stagesOfRate(values)
  const counts = stageCounts(values, stages)
  if (escapeTeeth === undefined || counts === null) return null
  const hours =
    hoursPerCentreTurn === undefined ? undefined : exactValue(readings, 'hoursPerCentreTurn', hoursPerCentreTurn)
  const exact = beatRate(counts.wheels, counts.pinions, escapeTeeth, hours)
  return { exact, stages, ...counts, escapeTeeth, hours }
}
