import Fraction from 'fraction.js'
import type { CaliberFieldKey } from '../fields/caliber-fields.ts'
import { stagesFromCentre } from '../formulas/train-stages.ts'
import { exactValue } from '../proofs/exact-value.ts'
import type { Caliber, CaliberValues } from '../record/caliber.ts'
import type { CountKey } from './cuttable-counts.ts'
import { depthPair } from './depth-pair.ts'
import { clearSizeShare } from './size-fit.ts'
import type { ProductRule } from './whole-number-search.ts'

export type Statement = 'rate' | 'seconds' | 'hour-hand' | 'sizes' | 'steepness'

/** What is stated of a movement as a product of its counts: factor × above / below stands for `stated`. */
export interface TrainRelation {
  readonly statement: Statement
  readonly above: readonly CountKey[]
  readonly below: readonly CountKey[]
  readonly factor: Fraction
  /** True where the rate is taken from a seconds arbor that turns once a minute. */
  readonly fromSeconds?: true
  /** Null where the figure itself is not stated. */
  readonly stated: Fraction | null
  readonly low: Fraction
  readonly high: Fraction
  /** Fields without which the relation cannot be used. */
  readonly lacking: readonly CaliberFieldKey[]
}

/** A rate is printed to the whole vibration, as in the proof `beat-rate-follows-train`. */
const wholeVibration = new Fraction(1, 2)
/** The steepest pair in print that was read for this: 120 on 6, Encyclopaedia Britannica, 4th ed., 1810, “Clock”, Ferguson’s (A). */
const steepest = new Fraction(20)
const one = new Fraction(1)

/** The values with a stand-in for every unknown count, so that the arbors of unknown counts are there. */
const withPlaces = (values: CaliberValues, unknown: readonly CountKey[]): CaliberValues => ({
  ...values,
  ...Object.fromEntries(unknown.map((key) => [key, 1])),
})

const exactly = (
  statement: Statement,
  above: readonly CountKey[],
  below: readonly CountKey[],
  factor: Fraction,
  stated: Fraction,
): Omit<TrainRelation, 'lacking'> => ({ statement, above, below, factor, stated, low: stated, high: stated })

const motionWork = (values: CaliberValues): Omit<TrainRelation, 'lacking'> =>
  exactly(
    'hour-hand',
    ['minuteWheel', 'hourWheel'],
    ['cannonPinion', 'minutePinion'],
    one,
    new Fraction(values.dialHours === '24' ? 24 : 12),
  )

/**
 * All that is stated of the counts of a movement, each as a relation; `fourthArbor` says whether the train has one.
 *
 * Where the seconds arbor turns once a minute but the counts before it are not known, the rate is taken from that arbor.
 */
export const trainRelations = (
  { values, readings, lists }: Pick<Caliber, 'values' | 'readings' | 'lists'>,
  unknown: readonly CountKey[],
  fourthArbor: boolean,
): readonly TrainRelation[] => {
  const known = withPlaces(values, unknown)
  const { hoursPerCentreTurn, secondsDisplay, beatRateVph } = values
  const hours = hoursPerCentreTurn === undefined ? one : exactValue(readings, 'hoursPerCentreTurn', hoursPerCentreTurn)
  const stages = stagesFromCentre(known, fourthArbor)
  const wheels = stages.map(({ wheel }) => wheel)
  const pinions = stages.map(({ pinion }) => pinion)
  const relations: Omit<TrainRelation, 'lacking'>[] = []

  const handStages = fourthArbor ? 2 : stages.length
  const shownBySeconds = secondsDisplay === 'small' || secondsDisplay === 'centre-direct'
  const turns = hours.inverse()
  if (shownBySeconds)
    relations.push(
      exactly('seconds', wheels.slice(0, handStages), pinions.slice(0, handStages), turns, new Fraction(60)),
    )
  if (secondsDisplay === 'centre-indirect')
    relations.push(
      exactly('seconds', ['centreWheel', 'sweepDriver'], ['thirdPinion', 'sweepPinion'], turns, new Fraction(60)),
    )

  const isOpen = (key: CaliberFieldKey) => known[key] === undefined
  const beforeHand = [...wheels.slice(0, handStages), ...pinions.slice(0, handStages)]
  const fromSeconds = shownBySeconds && beforeHand.some(isOpen)
  const stated = beatRateVph === undefined ? null : new Fraction(beatRateVph)
  relations.push({
    statement: 'rate',
    above: [...wheels.slice(fromSeconds ? handStages : 0), 'escapeTeeth'],
    below: pinions.slice(fromSeconds ? handStages : 0),
    factor: fromSeconds ? new Fraction(120) : turns.mul(2),
    ...(fromSeconds && { fromSeconds }),
    stated,
    low: stated?.sub(wholeVibration) ?? one,
    high: stated?.add(wholeVibration) ?? one,
  })
  relations.push(motionWork(values))
  for (const depth of lists.depths) {
    const pair = depthPair(depth)
    if (pair === null || pair.ratio === null) continue
    relations.push({
      ...exactly('sizes', [pair.driver], [pair.driven], one, pair.ratio),
      low: pair.ratio.mul(new Fraction(1 - clearSizeShare)),
      high: pair.ratio.mul(new Fraction(1 + clearSizeShare)),
    })
  }
  // Without this, two pairs of the steepest kind would stand for the three of a watch.
  if (!fourthArbor)
    for (const { wheel, pinion } of stages)
      relations.push({ ...exactly('steepness', [wheel], [pinion], one, steepest), low: new Fraction(1, 1000) })

  return relations.map((relation) => {
    const lacking: CaliberFieldKey[] = [...relation.above, ...relation.below].filter(isOpen)
    return { ...relation, lacking: relation.stated === null ? [...lacking, 'beatRateVph'] : lacking }
  })
}

/** What a relation comes to with these counts; null where one of them is not known. */
export const relationGives = (
  { above, below, factor }: TrainRelation,
  counts: Readonly<Partial<Record<CaliberFieldKey, unknown>>>,
): Fraction | null => {
  const product = (keys: readonly CountKey[]): bigint | null => {
    let so = 1n
    for (const key of keys) {
      const count = counts[key]
      if (typeof count !== 'number') return null
      so *= BigInt(count)
    }
    return so
  }
  const [over, under] = [product(above), product(below)]
  return over === null || under === null || under === 0n ? null : new Fraction(over, under).mul(factor)
}

/** A relation with its known counts worked into its bounds, for the search of the unknown ones. */
export const searchRule = (
  relation: TrainRelation,
  values: CaliberValues,
  unknown: ReadonlySet<CountKey>,
): ProductRule<CountKey> => {
  const known = (keys: readonly CountKey[]) => keys.filter((key) => !unknown.has(key))
  const rest = { ...relation, above: known(relation.above), below: known(relation.below) }
  const share = relationGives(rest, values) ?? one
  return {
    above: relation.above.filter((key) => unknown.has(key)),
    below: relation.below.filter((key) => unknown.has(key)),
    low: relation.low.div(share),
    high: relation.high.div(share),
  }
}

/** The counts that belong to a relation and are to be found. */
export const boundBy = (relation: TrainRelation, unknown: ReadonlySet<CountKey>): readonly CountKey[] =>
  [...relation.above, ...relation.below].filter((key) => unknown.has(key))
