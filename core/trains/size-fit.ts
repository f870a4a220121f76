import type { Caliber, CaliberValues } from '../record/caliber.ts'
import type { CountKey } from './cuttable-counts.ts'
import { depthPair } from './depth-pair.ts'

/**
 * Share by which the ratio of the pitch diameters may be off without a word: the 1 % that the proof of the module calls
 * doubtful and no more, and half a hundredth of a millimetre on a pinion of 1 mm.
 */
export const fittingSizeShare = 0.015

/** Share beyond which the sizes speak clearly against the counts: one leaf more or less of 16 shifts the ratio by 6 %. */
export const clearSizeShare = 0.06

interface SizedPair {
  readonly driver: CountKey
  readonly driven: CountKey
  /** Share by which the sizes give another ratio than the counts. */
  readonly share: number
}

/** How far the measured sizes are from these counts, for each depth that speaks of an unknown one. */
export const sizeFit = (
  values: CaliberValues,
  lists: Caliber['lists'],
  unknown: ReadonlySet<CountKey>,
): readonly SizedPair[] =>
  lists.depths.flatMap((depth) => {
    const pair = depthPair(depth)
    if (pair === null || pair.ratio === null || !(unknown.has(pair.driver) || unknown.has(pair.driven))) return []
    const { driver, driven, ratio } = pair
    const [over, under] = [values[driver], values[driven]]
    return over === undefined || under === undefined
      ? []
      : [{ driver, driven, share: ratio.valueOf() / (over / under) - 1 }]
  })
