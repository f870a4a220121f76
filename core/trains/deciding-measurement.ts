import { isTrainPinion } from './answer-remarks.ts'
import type { CountKey } from './cuttable-counts.ts'

type Counts = Readonly<Partial<Record<CountKey, number>>>

/** What would part several answers from each other. */
export type DecidingMeasurement =
  | {
      readonly kind: 'count'
      readonly key: CountKey
      /** The counts that the answers give it, in order. */
      readonly counts: readonly number[]
      /** Answers that may be left after counting it. */
      readonly left: number
    }
  | {
      readonly kind: 'distance'
      readonly driver: CountKey
      readonly driven: CountKey
      /** The distance between the centres in modules, half the sum of the counts, for each pair of counts. */
      readonly pairs: readonly { readonly driver: number; readonly driven: number; readonly modules: number }[]
      readonly left: number
    }

const sizesOf = (all: readonly (number | string)[]): ReadonlyMap<number | string, number> => {
  const sizes = new Map<number | string, number>()
  for (const one of all) sizes.set(one, (sizes.get(one) ?? 0) + 1)
  return sizes
}
const largest = (sizes: ReadonlyMap<unknown, number>): number => Math.max(0, ...sizes.values())

const countMeasurements = (answers: readonly Counts[], unknown: readonly CountKey[]) =>
  unknown.flatMap((key): Extract<DecidingMeasurement, { kind: 'count' }>[] => {
    const sizes = sizesOf(answers.map((counts) => counts[key] ?? 0))
    if (sizes.size < 2) return []
    return [{ kind: 'count', key, counts: [...sizes.keys()].map(Number).sort((a, b) => a - b), left: largest(sizes) }]
  })

const distanceMeasurements = (
  answers: readonly Counts[],
  known: Counts,
  pairs: readonly (readonly [driver: CountKey, driven: CountKey])[],
) =>
  pairs.flatMap(([driver, driven]): Extract<DecidingMeasurement, { kind: 'distance' }>[] => {
    const given = answers.flatMap((counts) => {
      const [over, under] = [counts[driver] ?? known[driver], counts[driven] ?? known[driven]]
      return over === undefined || under === undefined ? [] : [[over, under] as const]
    })
    const sums = sizesOf(given.map(([over, under]) => over + under))
    if (given.length < answers.length || sums.size < 2) return []
    const different = new Map(given.map(([over, under]) => [`${over}/${under}`, [over, under] as const]))
    const listed = [...different.values()].map(([over, under]) => ({
      driver: over,
      driven: under,
      modules: (over + under) / 2,
    }))
    return [{ kind: 'distance', driver, driven, pairs: listed, left: largest(sums) }]
  })

/**
 * What to count or to measure so that few of several answers are left: the part whose count parts them best, and the
 * pair whose centre distance does. Nothing where there is one answer or none.
 */
export const decidingMeasurements = (
  answers: readonly Counts[],
  unknown: readonly CountKey[],
  known: Counts,
  pairs: readonly (readonly [driver: CountKey, driven: CountKey])[],
): readonly DecidingMeasurement[] => {
  if (answers.length < 2) return []
  const [count] = countMeasurements(answers, unknown).sort(
    // Leaves are counted faster than teeth.
    (one, other) => one.left - other.left || Number(isTrainPinion(other.key)) - Number(isTrainPinion(one.key)),
  )
  const [distance] = distanceMeasurements(answers, known, pairs).sort((one, other) => one.left - other.left)
  return [...(count ? [count] : []), ...(distance ? [distance] : [])]
}
