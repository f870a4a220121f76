import type { Caliber, CaliberValues, Depth } from '../record/caliber.ts'
import { type CountKey, countKeys } from './cuttable-counts.ts'
import { depthPair } from './depth-pair.ts'

/** How far modules of neighbouring pairs may part where only one neighbour is measured; common practice, from memory. */
const neighbourShare = 1.3
/** Room for the rounding of the sizes. */
const rounding = 1.02

const moduleOf = ({ driverPitchMm, drivenPitchMm, centreDistanceMm }: Depth, over: number, under: number) =>
  driverPitchMm !== undefined
    ? driverPitchMm / over
    : drivenPitchMm !== undefined
      ? drivenPitchMm / under
      : centreDistanceMm !== undefined
        ? (2 * centreDistanceMm) / (over + under)
        : undefined

/**
 * How far the modules that these counts give the measured pairs of unknown counts lie outside those of their measured
 * neighbours: 0 where all lie between them, 0.2 where one is a fifth too great or too small.
 *
 * Wheels of a train are cut with the same or a finer module from barrel to escape; common practice, from memory.
 */
export const moduleMisfit = (
  values: CaliberValues,
  lists: Caliber['lists'],
  unknown: ReadonlySet<CountKey>,
): number => {
  const end = countKeys.indexOf('escapeTeeth')
  const pairs = lists.depths
    .flatMap((depth) => {
      const pair = depthPair(depth)
      if (pair === null || countKeys.indexOf(pair.driver) > end) return []
      const [over, under] = [values[pair.driver], values[pair.driven]]
      const module = over === undefined || under === undefined ? undefined : moduleOf(depth, over, under)
      const isUnknown = unknown.has(pair.driver) || unknown.has(pair.driven)
      return module === undefined ? [] : [{ at: countKeys.indexOf(pair.driver), module, isUnknown }]
    })
    .sort((one, other) => one.at - other.at)
  let misfit = 0
  pairs.forEach(({ module, isUnknown }, i) => {
    if (!isUnknown) return
    const before = pairs.slice(0, i).findLast((pair) => !pair.isUnknown)?.module
    const after = pairs.slice(i + 1).find((pair) => !pair.isUnknown)?.module
    if (before === undefined && after === undefined) return
    const most = (before ?? (after ?? 0) * neighbourShare) * rounding
    const least = (after ?? (before ?? 0) / neighbourShare) / rounding
    misfit += module > most ? module / most - 1 : module < least ? least / module - 1 : 0
  })
  return misfit
}
