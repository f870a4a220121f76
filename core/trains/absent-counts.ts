import { hasFourthArbor } from '../formulas/fourth-arbor.ts'
import { missingCounts, stagesFromCentre } from '../formulas/train-stages.ts'
import type { CaliberValues } from '../record/caliber.ts'
import { type CountKey, isCountKey } from './cuttable-counts.ts'

const motionWork = ['cannonPinion', 'minuteWheel', 'minutePinion', 'hourWheel'] as const satisfies readonly CountKey[]
const sweep = ['sweepDriver', 'sweepPinion'] as const satisfies readonly CountKey[]

/**
 * The counts that a caliber does not state and needs: those of its train where the beat rate is stated or the train is
 * begun, those of a motion work that is begun, and the sweep pair of an indirect centre seconds hand.
 * @example
 * absentCounts({ cannonPinion: 12, minuteWheel: 36, minutePinion: 10 }, true) // ['hourWheel']
 */
export const absentCounts = (values: CaliberValues, fourthArbor: boolean): readonly CountKey[] => {
  const isAbsent = (key: CountKey) => values[key] === undefined
  const stages = stagesFromCentre(values, fourthArbor)
  const ofTrain = [
    ...missingCounts(values, stages),
    ...(isAbsent('escapeTeeth') ? ['escapeTeeth' as const] : []),
  ].filter(isCountKey)
  const inTrain = stages.length * 2 + 1
  const train = values.beatRateVph === undefined && ofTrain.length === inTrain ? [] : ofTrain
  const ofSweep = sweep.filter(isAbsent)
  // The train gives its rate without the sweep pair: a pair not begun is looked for only where nothing else is.
  const wantsSweep =
    values.secondsDisplay === 'centre-indirect' && (ofSweep.length < sweep.length || train.length === 0)
  const ofMotion = motionWork.filter(isAbsent)
  return [...train, ...(wantsSweep ? ofSweep : []), ...(ofMotion.length < motionWork.length ? ofMotion : [])]
}

/**
 * Whether the train may have a fourth arbor, the likelier first: where neither of its counts is stated or looked for,
 * a clock of two pairs is tried before a watch of three.
 */
export const arborGuesses = (values: CaliberValues, unknown: readonly CountKey[]): readonly boolean[] => {
  if (unknown.includes('fourthPinion') || unknown.includes('fourthWheel')) return [true]
  const fourth = hasFourthArbor(values)
  return fourth === null ? [false, true] : [fourth]
}
