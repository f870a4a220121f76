import type Fraction from 'fraction.js'
import { caliberFields } from '../fields/caliber-fields.ts'
import { gearRatio } from '../formulas/gear-ratio.ts'
import { stagesFromCentre, stagesToCentre } from '../formulas/train-stages.ts'
import { asWritten } from '../proofs/exact-value.ts'
import type { Caliber, CaliberValues } from '../record/caliber.ts'
import { customaryLeaves } from './customary-leaves.ts'
import { type CountKey, isCountKey } from './cuttable-counts.ts'
import { depthPair } from './depth-pair.ts'
import { clearSizeShare, fittingSizeShare, sizeFit } from './size-fit.ts'

/** What is to be said of an answer besides its counts; `core/wording` says it. */
export type AnswerRemark =
  | {
      readonly code: 'unusual-count'
      readonly key: CountKey
      readonly count: number
      readonly usual: readonly [number, number]
    }
  | { readonly code: 'uncommon-leaves'; readonly key: CountKey; readonly count: number }
  | { readonly code: 'steep-pair'; readonly driver: CountKey; readonly driven: CountKey; readonly ratio: number }
  | { readonly code: 'rate-rounded'; readonly rate: number | string; readonly stated: number }
  | {
      readonly code: 'sizes-differ'
      readonly driver: CountKey
      readonly driven: CountKey
      /** Share by which the sizes give another ratio than the counts. */
      readonly share: number
      readonly clear: boolean
    }
  | {
      readonly code: 'module-by-distance'
      readonly driver: CountKey
      readonly driven: CountKey
      readonly distanceMm: number
      readonly moduleMm: number
    }
  | { readonly code: 'no-fourth-arbor' }

/** More than this to one in a single pair is rare in a watch; common practice. */
const steep = 12
/** The pinions of the going train, whose leaves are customary or not. */
export const isTrainPinion = (key: CountKey): boolean => key.endsWith('Pinion') && caliberFields[key].group === 'train'

interface Answer {
  /** The values with the counts that were found. */
  readonly values: CaliberValues
  readonly fourthArbor: boolean
  readonly rate: Fraction | null
}

/** What is to be said of an answer besides its counts, the gravest first. */
export const answerRemarks = (
  { values, fourthArbor, rate }: Answer,
  { lists, values: stated }: Pick<Caliber, 'lists' | 'values'>,
  unknown: ReadonlySet<CountKey>,
  /** Whether the counts found are those that give the rate. */
  ofTrain: boolean,
): readonly AnswerRemark[] => {
  const remarks: AnswerRemark[] = []
  for (const { driver, driven, share } of sizeFit(values, lists, unknown)) {
    const off = Math.abs(share)
    if (off > fittingSizeShare)
      remarks.push({ code: 'sizes-differ', driver, driven, share, clear: off > clearSizeShare })
  }
  for (const key of unknown) {
    const count = values[key]
    if (count === undefined) continue
    const { usual } = caliberFields[key]
    if (count < usual[0] || count > usual[1]) remarks.push({ code: 'unusual-count', key, count, usual })
    else if (isTrainPinion(key) && !customaryLeaves.includes(count))
      remarks.push({ code: 'uncommon-leaves', key, count })
  }
  for (const { wheel, pinion } of [...stagesToCentre(values), ...stagesFromCentre(values, fourthArbor)]) {
    const [teeth, leaves] = [values[wheel], values[pinion]]
    if (teeth === undefined || leaves === undefined || !isCountKey(wheel) || !isCountKey(pinion)) continue
    const ratio = gearRatio([teeth], [leaves]).valueOf()
    if (ratio > steep && (unknown.has(wheel) || unknown.has(pinion)))
      remarks.push({ code: 'steep-pair', driver: wheel, driven: pinion, ratio })
  }
  if (rate !== null && stated.beatRateVph !== undefined && rate.valueOf() !== stated.beatRateVph)
    remarks.push({ code: 'rate-rounded', rate: asWritten(rate), stated: stated.beatRateVph })
  for (const depth of lists.depths) {
    const pair = depthPair(depth)
    if (pair === null || pair.ratio !== null || pair.centreDistanceMm === undefined) continue
    const [over, under] = [values[pair.driver], values[pair.driven]]
    if (over === undefined || under === undefined || !(unknown.has(pair.driver) || unknown.has(pair.driven))) continue
    const { driver, driven, centreDistanceMm } = pair
    const moduleMm = (2 * centreDistanceMm) / (over + under)
    remarks.push({ code: 'module-by-distance', driver, driven, distanceMm: centreDistanceMm, moduleMm })
  }
  if (ofTrain && !fourthArbor) remarks.push({ code: 'no-fourth-arbor' })
  return remarks
}
