import { dailyDifference } from '../formulas/daily-difference.ts'
import { nominalRateShare } from '../formulas/fourth-arbor.ts'
import { handsGain, rateOfTrain } from '../formulas/hands-gain.ts'
import type { Caliber, CaliberValues } from '../record/caliber.ts'
import { customaryLeaves } from '../trains/customary-leaves.ts'
import { type CountKey, cuttable } from '../trains/cuttable-counts.ts'
import { type BenchTrain, benchTrain, type CountedTeeth, type TrainRate } from './bench-train.ts'

/** What was seen of a movement on the bench, besides its teeth. */
export interface Observed {
  /** The rate of the balance as measured; the specified one where it was not. */
  readonly beatRateVph?: number
  /** What the hands gain in a day against true time, a loss being negative; nothing where only the rate was measured. */
  readonly handsGainSecondsPerDay?: number
  /** Whether the seconds hand goes round once while the minute hand goes one minute. */
  readonly secondsHandTrue?: boolean
}

/** A part with another count than the specified one. */
export interface OtherCount {
  readonly field: CountKey
  readonly specified: number
  readonly there: number
}

/** A part that was counted different, and what the train on the bench gives with it put back. */
export interface PutBack extends OtherCount {
  readonly rate: TrainRate
  readonly restores: boolean
}

/** One part that would explain what was found, alone. */
export interface Explanation extends OtherCount {
  /** It was counted so; otherwise it was not counted, and this is a guess. */
  readonly counted: boolean
  readonly rate: TrainRate
  /** What stays unexplained of the rate, and of the gain of the hands. */
  readonly restVph: number
  readonly restSecondsPerDay: number
  /** It explains the rate to half a vibration. */
  readonly exact: boolean
  readonly customary: boolean
  /** Whether the seconds hand stays true with it; null where there is none, or that cannot be told. */
  readonly secondsTrue: boolean | null
}

/** The train on the bench beside the specified one. */
export interface BenchFinding {
  /** The rate that is specified, or else the one that the specified counts give; null where neither is known. */
  readonly specifiedVph: number | null
  /** Counts that are neither specified nor made, without which the train gives no rate. */
  readonly missing: readonly CountKey[]
  /** The train with the counts made, the others as specified. */
  readonly bench: TrainRate | null
  /** Against the specified rate: vibrations more, seconds a day, and what the hands gain while the balance keeps to it. */
  readonly difference: { readonly vph: number; readonly secondsPerDay: number; readonly handsGain: number } | null
  readonly different: readonly OtherCount[]
  readonly putBack: readonly PutBack[]
  /** The rate for which the train must be cut to do what was observed. */
  readonly observedTrainVph: number | null
  /** The train on the bench does what was observed, within what the regulator can take up. */
  readonly withinRegulation: boolean
  /** The likeliest first. */
  readonly explanations: readonly Explanation[]
  /** How many more would explain the rate, but not what the seconds hand does. */
  readonly againstSecondsHand: number
}

const wholeVibration = 0.5
const mostExplanations = 8
/** A neighbour may have so many teeth or leaves more or less; common practice, from memory. */
const nearestTeeth = 12
const nearestLeaves = 4
/** Escape wheels have 15 teeth nearly always, else 13 to 21; common practice, from memory. */
const customaryEscapeTeeth = [13, 14, 15, 16, 17, 18, 20, 21]

const isPinion = (field: CountKey) => field.endsWith('Pinion')

const isCustomary = (field: CountKey, count: number): boolean =>
  isPinion(field)
    ? customaryLeaves.includes(count)
    : field === 'escapeTeeth'
      ? customaryEscapeTeeth.includes(count)
      : true

/** The whole counts on either side of the one that would be needed; a wheel moves the rate with its teeth, a pinion against its leaves. */
const neighbours = (field: CountKey, now: number, from: number, to: number): number[] => {
  const needed = isPinion(field) ? (now * from) / to : (now * to) / from
  const reach = isPinion(field) ? nearestLeaves : nearestTeeth
  const [least, most] = cuttable(field) ?? [0, 0]
  return [...new Set([Math.floor(needed), Math.ceil(needed)])].filter(
    (count) => count !== now && Math.abs(count - now) <= reach && count >= least && count <= most,
  )
}

const byLikelihood = (a: Explanation, b: Explanation): number =>
  Number(b.counted) - Number(a.counted) ||
  Number(b.exact) - Number(a.exact) ||
  Number(b.customary) - Number(a.customary) ||
  Math.abs(a.there / a.specified - 1) - Math.abs(b.there / b.specified - 1)

const explains = (part: OtherCount, counted: boolean, rate: TrainRate | null, wanted: number): Explanation[] => {
  const restVph = rate === null ? Number.NaN : wanted - rate.vph.valueOf()
  if (rate === null || !(Math.abs(restVph) <= wanted * nominalRateShare)) return []
  return [
    {
      ...part,
      counted,
      rate,
      restVph,
      restSecondsPerDay: handsGain(rate.vph.valueOf(), wanted),
      exact: Math.abs(restVph) <= wholeVibration,
      customary: isCustomary(part.field, part.there),
      secondsTrue: rate.secondsTurns === null ? null : rate.secondsTurns.equals(60),
    },
  ]
}

interface Search {
  readonly train: BenchTrain
  readonly specified: CaliberValues
  readonly onBench: CaliberValues
  readonly counted: CountedTeeth
  readonly different: readonly OtherCount[]
  readonly wanted: number
}

/** Parts counted different, each alone in the specified train; then parts not counted, each alone in the train on the bench. */
const explanationsOf = ({ train, specified, onBench, counted, different, wanted }: Search): Explanation[] => {
  const bench = train.rateOf(onBench)?.vph.valueOf()
  const found = different.flatMap((part) =>
    explains(part, true, train.rateOf({ ...specified, [part.field]: part.there }), wanted),
  )
  if (bench === undefined || Math.abs(wanted - bench) <= wanted * nominalRateShare) return found
  const guessed = train.keys
    .filter((field) => counted[field] === undefined)
    .flatMap((field) => {
      const now = onBench[field]
      if (now === undefined) return []
      return neighbours(field, now, bench, wanted).flatMap((there) =>
        explains({ field, specified: now, there }, false, train.rateOf({ ...onBench, [field]: there }), wanted),
      )
    })
  return [...found, ...guessed]
}

/**
 * Sets a movement on the bench beside its caliber: the rate that its counted train gives, which part put back to the
 * specification restores it, and which single foreign wheel or pinion would explain what was counted or observed.
 *
 * A part explains a rate within 0.3 %, as one tooth on any wheel shifts it by 0.67 % or more. What was observed is
 * taken as n of the balance / (1 + gain of the hands / 86 400): the rate for which the train must be cut.
 */
export const foreignPart = (
  caliber: Pick<Caliber, 'values' | 'readings'>,
  counted: CountedTeeth,
  observed: Observed = {},
): BenchFinding => {
  const train = benchTrain(caliber, counted)
  const { values } = caliber
  const specified: CaliberValues = { ...counted, ...values }
  const onBench: CaliberValues = { ...values, ...counted }
  const different = train.keys.flatMap((field): OtherCount[] => {
    const was = values[field]
    const there = counted[field]
    return was === undefined || there === undefined || was === there ? [] : [{ field, specified: was, there }]
  })

  const asSpecified = train.rateOf(specified)
  const specifiedVph = values.beatRateVph ?? asSpecified?.vph.valueOf() ?? null
  const bench = train.rateOf(onBench)
  const benchVph = bench?.vph.valueOf()
  const putBack = different.flatMap(({ field, specified: was, there }): PutBack[] => {
    const rate = train.rateOf({ ...onBench, [field]: was })
    if (rate === null) return []
    const restores = specifiedVph !== null && Math.abs(rate.vph.valueOf() - specifiedVph) <= wholeVibration
    return [{ field, specified: was, there, rate, restores }]
  })

  const looked = observed.beatRateVph !== undefined || observed.handsGainSecondsPerDay !== undefined
  const balanceVph = observed.beatRateVph ?? specifiedVph
  const observedTrainVph =
    looked && balanceVph !== null ? rateOfTrain(balanceVph, observed.handsGainSecondsPerDay ?? 0) : null
  const withinRegulation =
    observedTrainVph !== null &&
    benchVph !== undefined &&
    Math.abs(observedTrainVph - benchVph) <= observedTrainVph * nominalRateShare

  const wanted = observedTrainVph ?? benchVph
  const all =
    wanted === undefined
      ? []
      : explanationsOf({ train, specified, onBench, counted, different, wanted }).sort(byLikelihood)
  const { secondsHandTrue } = observed
  const kept = all.filter(
    ({ secondsTrue }) => secondsHandTrue === undefined || secondsTrue === null || secondsTrue === secondsHandTrue,
  )
  return {
    specifiedVph,
    missing: train.keys.filter((field) => onBench[field] === undefined),
    bench,
    difference:
      benchVph === undefined || specifiedVph === null
        ? null
        : {
            vph: benchVph - specifiedVph,
            secondsPerDay: dailyDifference(benchVph, specifiedVph),
            handsGain: handsGain(specifiedVph, benchVph),
          },
    different,
    putBack,
    observedTrainVph,
    withinRegulation,
    explanations: kept.slice(0, mostExplanations),
    againstSecondsHand: all.length - kept.length,
  }
}
