import { caliberFields } from '../fields/caliber-fields.ts'
import { stagesFromCentre } from '../formulas/train-stages.ts'
import type { Caliber, CaliberValues } from '../record/caliber.ts'
import { isTrainPinion } from './answer-remarks.ts'
import { customaryLeaves } from './customary-leaves.ts'
import type { CountKey } from './cuttable-counts.ts'
import { moduleMisfit } from './module-fit.ts'
import { fittingSizeShare, sizeFit } from './size-fit.ts'

/** Escape wheels by how often the trade cuts them: 15 first, then 16 and what fast trains take; common practice, from memory. */
const escapeOrder: readonly number[] = [15, 16, 20, 18, 21, 17, 14, 13, 12, 30]

/** Escape pinions, by how often the trade cuts them; common practice, from memory. */
const escapeLeavesOrder: readonly number[] = [8, 7, 6, 10, 12]

/** Ratios of a pair that the trade likes in a going train; common practice, from memory. */
const likedRatio: readonly [number, number] = [6, 10.5]

/** How far a number lies outside a range, as a share of the end it passes. */
const outside = (value: number, [low, high]: readonly [number, number]): number =>
  value < low ? low / value - 1 : value > high ? value / high - 1 : 0

const countCost = (key: CountKey, count: number): number => {
  const unusual = outside(count, caliberFields[key].usual)
  const beyond = unusual === 0 ? 0 : 2 + 4 * unusual
  if (key === 'escapeTeeth') {
    const at = escapeOrder.indexOf(count)
    return (at < 0 ? 2 : at * 0.2) + beyond
  }
  if (key === 'escapePinion') {
    const at = escapeLeavesOrder.indexOf(count)
    return (at < 0 ? 1.5 : at * 0.25) + beyond
  }
  if (isTrainPinion(key)) return (customaryLeaves.includes(count) ? 0 : 1.5) + beyond
  // A count with small factors is divided and cut with the plates at hand.
  const smooth = [2, 3, 5].reduce((rest, by) => {
    let left = rest
    while (left % by === 0) left /= by
    return left
  }, count)
  return (smooth === 1 ? 0 : smooth === 7 ? 0.1 : 0.4) + beyond
}

const trainCost = (values: CaliberValues, fourthArbor: boolean): number => {
  const stages = stagesFromCentre(values, fourthArbor).flatMap(({ wheel, pinion }) => {
    const [teeth, leaves] = [values[wheel], values[pinion]]
    return teeth === undefined || leaves === undefined ? [] : [{ teeth, leaves, ratio: teeth / leaves }]
  })
  let cost = 0
  stages.forEach(({ teeth, leaves, ratio }, i) => {
    cost += 3 * outside(ratio, likedRatio)
    const before = stages[i - 1]
    if (before === undefined) return
    // Neighbours are cut alike, and what grows along the train is the speed, not the leaves.
    cost += 0.05 * Math.abs(leaves - before.leaves) + (leaves > before.leaves ? 0.4 : 0)
    cost += 0.3 * Math.abs(Math.log(teeth / before.teeth))
  })
  const [first, second] = stages.map(({ ratio }) => ratio)
  // The split by which the fourth arbor turns once a minute: 8 × 7½, or the other way about.
  if (first === 8 && second === 7.5) cost -= 0.5
  else if (first === 7.5 && second === 8) cost -= 0.3
  return cost
}

const motionCost = ({ cannonPinion, minuteWheel, minutePinion, hourWheel }: CaliberValues): number => {
  if (cannonPinion === undefined || minuteWheel === undefined) return 0
  if (minutePinion === undefined || hourWheel === undefined) return 0
  const [first, second] = [minuteWheel / cannonPinion, hourWheel / minutePinion]
  const usualSplit = (first === 3 && second === 4) || (first === 4 && second === 3)
  return (usualSplit ? -0.5 : 0) + 2 * outside(first, [2.4, 5]) + 2 * outside(second, [2.4, 5])
}

/** What a size that fits badly outweighs: any unusual count. */
const badSize = 6

/**
 * How far an answer is from what the trade is used to, and from the sizes measured: the least comes first.
 *
 * Modules that fit the measured neighbours, leaves that are customary, teeth in the usual range, 15 escape teeth, pairs between 6 and 10½ to one, neighbours cut
 * alike, a motion work of 3 × 4. The weights are ours; they only order answers, all of which fit what is stated.
 */
export const customaryCost = (
  values: CaliberValues,
  lists: Caliber['lists'],
  unknown: ReadonlySet<CountKey>,
  fourthArbor: boolean,
): number => {
  let cost = trainCost(values, fourthArbor) + motionCost(values)
  for (const key of unknown) {
    const count = values[key]
    if (count !== undefined) cost += countCost(key, count)
  }
  for (const { share } of sizeFit(values, lists, unknown)) {
    const off = Math.abs(share)
    cost += 40 * off + (off > fittingSizeShare ? badSize : 0)
  }
  return cost + 15 * moduleMisfit(values, lists, unknown)
}
