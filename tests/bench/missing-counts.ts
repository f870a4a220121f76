import type { CaliberValues } from '../../core/record/caliber.ts'
import { type CountKey, cuttable } from '../../core/trains/cuttable-counts.ts'
import { findMissingCounts } from '../../core/trains/missing-counts.ts'
import { type Figure, figure, timesOf } from './measure.ts'

const counts = {
  centreWheel: 80,
  thirdPinion: 10,
  thirdWheel: 75,
  fourthPinion: 10,
  fourthWheel: 80,
  escapePinion: 8,
  escapeTeeth: 15,
} as const satisfies CaliberValues
const keys = Object.keys(counts) as readonly (keyof typeof counts)[]
/** No seconds hand, which would leave fewer numbers open. */
const caliber = {
  values: { ...counts, beatRateVph: 18000 },
  readings: {},
  lists: { jewels: [], lubrication: [], depths: [], parts: [], stripOrder: [] },
}

const choices = (howMany: number, from: readonly CountKey[] = keys): readonly (readonly CountKey[])[] =>
  howMany === 0
    ? [[]]
    : from.flatMap((key, at) => choices(howMany - 1, from.slice(at + 1)).map((others) => [key, ...others]))

/** A bare loop over every cuttable count of the same unknowns, multiplying and comparing nothing. */
const bareLoop = (unknown: readonly CountKey[]): number => {
  const [key, ...others] = unknown
  if (key === undefined) return 1
  const [low, high] = cuttable(key) ?? [0, -1]
  let passed = 0
  for (let count = low; count <= high; count += 1) passed += bareLoop(others)
  return passed
}

/** Every choice of two and of three unknown counts of a train, beside a bare loop over the same numbers. */
export const measureMissing = async (): Promise<readonly Figure[]> => {
  const figures: Figure[] = []
  for (const [howMany, most] of [
    [2, 20],
    [3, 1000],
  ] as const) {
    const all = choices(howMany)
    for (const unknown of all) findMissingCounts(caliber, unknown)
    const ours = await timesOf(all, (unknown) => findMissingCounts(caliber, unknown))
    const loops = await timesOf(all, bareLoop)
    figures.push(
      figure(`missing counts: ${howMany} unknown`, ours, `p99 < ${most}`, (_, p99) => p99 < most),
      figure('  a bare loop over the same counts', loops),
    )
  }
  return figures
}
