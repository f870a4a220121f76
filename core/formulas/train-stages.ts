import type { CaliberFieldKey } from '../fields/caliber-fields.ts'
import type { CaliberValues } from '../record/caliber.ts'

/** The arbors of a going train in the order of the power flow. */
export type TrainArbor = 'barrel' | 'intermediate' | 'centre' | 'third' | 'fourth' | 'fifth' | 'escape'

/** The wheel on each arbor that drives the next in the power flow. */
const wheelKeys = {
  barrel: 'barrelTeeth',
  intermediate: 'intermediateWheel',
  centre: 'centreWheel',
  third: 'thirdWheel',
  fourth: 'fourthWheel',
  fifth: 'fifthWheel',
} as const satisfies Partial<Record<TrainArbor, CaliberFieldKey>>

/** The pinion by which each arbor is driven. */
const pinionKeys = {
  intermediate: 'intermediatePinion',
  centre: 'centrePinion',
  third: 'thirdPinion',
  fourth: 'fourthPinion',
  fifth: 'fifthPinion',
  escape: 'escapePinion',
  sweep: 'sweepPinion',
} as const satisfies Partial<Record<TrainArbor | 'sweep', CaliberFieldKey>>

/** One pair of a train: a wheel that drives the pinion of another arbor. */
export interface Stage {
  readonly driver: keyof typeof wheelKeys
  readonly driven: keyof typeof pinionKeys
  readonly wheel: (typeof wheelKeys)[keyof typeof wheelKeys] | 'sweepDriver'
  readonly pinion: (typeof pinionKeys)[keyof typeof pinionKeys]
}

const stage = (driver: Stage['driver'], driven: Stage['driven']): Stage => ({
  driver,
  driven,
  wheel: wheelKeys[driver],
  pinion: pinionKeys[driven],
})

const centreToThird = stage('centre', 'third')
const thirdToFourth = stage('third', 'fourth')
const fifthToEscape = stage('fifth', 'escape')
const chains = {
  usual: [centreToThird, thirdToFourth, stage('fourth', 'escape')],
  fifth: [centreToThird, thirdToFourth, stage('fourth', 'fifth'), fifthToEscape],
  noFourth: [centreToThird, stage('third', 'escape')],
  fifthButNoFourth: [centreToThird, stage('third', 'fifth'), fifthToEscape],
} as const satisfies Record<string, readonly Stage[]>

const toCentre: readonly Stage[] = [stage('barrel', 'centre')]
const toCentreByIntermediate: readonly Stage[] = [stage('barrel', 'intermediate'), stage('intermediate', 'centre')]

/** The pair that drives an indirect sweep seconds hand, beside the power flow. */
export const thirdToSweep: Stage = { driver: 'third', driven: 'sweep', wheel: 'sweepDriver', pinion: 'sweepPinion' }

/**
 * The pairs from the centre wheel to the escape pinion. The fifth arbor is there where either of its counts is stated.
 * @validity Any plain train; whether there is a fourth arbor is for the caller to say.
 * @source W. Derham, The Artificial Clock-maker, 1696, pp. 10–13.
 */
export const stagesFromCentre = (values: CaliberValues, fourthArbor: boolean): readonly Stage[] => {
  const fifthArbor = values.fifthPinion !== undefined || values.fifthWheel !== undefined
  if (fourthArbor) return fifthArbor ? chains.fifth : chains.usual
  return fifthArbor ? chains.fifthButNoFourth : chains.noFourth
}

/**
 * The pairs from the barrel to the centre pinion. The intermediate arbor is there where either of its counts is stated.
 * @validity Any plain train with the centre arbor in the power flow.
 * @source W. L. Goodrich, The Modern Clock, 1905, pp. 259–266.
 */
export const stagesToCentre = (values: CaliberValues): readonly Stage[] =>
  values.intermediatePinion === undefined && values.intermediateWheel === undefined ? toCentre : toCentreByIntermediate

/**
 * The counts of a chain of pairs as two lists, teeth and leaves; null where one is not stated.
 * @validity Any chain of pairs.
 * @source Definition: each pair is a wheel and the pinion it drives.
 */
export const stageCounts = (
  values: CaliberValues,
  stages: readonly Stage[],
): { wheels: number[]; pinions: number[] } | null => {
  const wheels: number[] = []
  const pinions: number[] = []
  for (const { wheel, pinion } of stages) {
    const teeth = values[wheel]
    const leaves = values[pinion]
    if (teeth === undefined || leaves === undefined) return null
    wheels.push(teeth)
    pinions.push(leaves)
  }
  return { wheels, pinions }
}

/**
 * The counts of a chain of pairs that are not stated, by field key.
 * @validity Any chain of pairs.
 * @source Definition: each pair is a wheel and the pinion it drives.
 */
export const missingCounts = (values: CaliberValues, stages: readonly Stage[]): CaliberFieldKey[] =>
  stages.flatMap(({ wheel, pinion }) => [wheel, pinion].filter((key) => values[key] === undefined))
