import { plain } from '../quantities/plain.ts'
import type { CaliberValues } from '../record/caliber.ts'
import { type EndMatch, endMatch, type SpringEnd } from './end-compatibility.ts'
import { emptyCase, fillCase, springTask } from './spring-case.ts'
import { springLimits as limits } from './spring-limits.ts'

/** A strip as it was measured; what was not measured is left out. */
export interface MeasuredStrip {
  readonly heightMm?: number
  readonly thicknessMm?: number
  readonly lengthMm?: number
  readonly end?: SpringEnd
}

/** How far a reading may be off, each way. */
export interface StripUncertainty {
  readonly heightMm: number
  readonly thicknessMm: number
  readonly lengthMm: number
}

/**
 * What careful work reads to: calliper or height by micrometer to 0.02 mm, thickness by micrometer to 0.002 mm, a length
 * laid out along a rule to 5 mm. Common practice; a reading of one's own instrument takes their place.
 */
export const usualUncertainty: StripUncertainty = { heightMm: 0.02, thicknessMm: 0.002, lengthMm: 5 }

export type SizeVerdict = 'same' | 'more' | 'less' | 'cannot-tell' | 'not-measured' | 'not-specified'

export interface SizeCompared {
  readonly verdict: SizeVerdict
  readonly specified: number | null
  readonly measured: number | null
  readonly difference: number | null
}

/** What figures the strip in the barrel has beside those of the strip specified. */
export interface StripEffect {
  readonly turns: number | null
  readonly fill: number | null
  readonly hours: number | null
  readonly clearanceMm: number | null
}

export interface StripCompared {
  /** `specified` where every size that was measured agrees, `foreign` where one does not, else `cannot-tell`. */
  readonly verdict: 'specified' | 'foreign' | 'cannot-tell'
  readonly height: SizeCompared
  readonly thickness: SizeCompared
  readonly length: SizeCompared
  readonly end: EndMatch
  readonly specified: StripEffect
  readonly found: StripEffect
  /** Torque of the strip found against the one specified: in each turn and at full wind; null where not known. */
  readonly torqueRate: number | null
  readonly torqueFullWind: number | null
}

const compared = (
  specified: number | undefined,
  measured: number | undefined,
  maker: number,
  reading: number,
): SizeCompared => {
  const sides = { specified: specified ?? null, measured: measured ?? null }
  if (measured === undefined) return { ...sides, verdict: 'not-measured', difference: null }
  if (specified === undefined) return { ...sides, verdict: 'not-specified', difference: null }
  const difference = plain(measured - specified)
  const off = Math.abs(difference)
  if (off <= maker) return { ...sides, verdict: 'same', difference }
  // Another only where the reading, at its most lenient, lies beyond what makers allow.
  if (plain(off - reading) <= maker) return { ...sides, verdict: 'cannot-tell', difference }
  return { ...sides, verdict: difference > 0 ? 'more' : 'less', difference }
}

const known = (figure: number): number | null => (Number.isFinite(figure) ? figure : null)

const effectOf = (values: CaliberValues, strip: MeasuredStrip) => {
  const { heightMm = Number.NaN, thicknessMm = Number.NaN, lengthMm = Number.NaN } = strip
  return fillCase(emptyCase(), springTask(values), { supplierRef: 'in the barrel', heightMm, thicknessMm, lengthMm })
}

/**
 * Compares the strip in the barrel with the one that the maker specified: size by size, and what it does to turns, hours
 * and torque. A size that was not measured is taken as specified for what it does.
 * @example
 * compareStrip({ springThicknessMm: 0.105 }, { thicknessMm: 0.12 }).thickness.verdict // 'more'
 */
export const compareStrip = (
  values: CaliberValues,
  strip: MeasuredStrip,
  uncertainty: StripUncertainty = usualUncertainty,
): StripCompared => {
  const { springHeightMm, springThicknessMm, springLengthMm } = values
  const height = compared(springHeightMm, strip.heightMm, limits.sameHeightMm, uncertainty.heightMm)
  const thickness = compared(springThicknessMm, strip.thicknessMm, limits.sameThicknessMm, uncertainty.thicknessMm)
  const length = compared(
    springLengthMm,
    strip.lengthMm,
    (springLengthMm ?? 0) * limits.sameLengthShare,
    uncertainty.lengthMm,
  )
  const end = endMatch(strip.end, values.springEnd)

  const asSpecified: MeasuredStrip = {
    ...(springHeightMm !== undefined && { heightMm: springHeightMm }),
    ...(springThicknessMm !== undefined && { thicknessMm: springThicknessMm }),
    ...(springLengthMm !== undefined && { lengthMm: springLengthMm }),
  }
  const before = effectOf(values, asSpecified)
  const after = effectOf(values, { ...asSpecified, ...strip })
  const effect = ({ turns, fill, hours, clearanceMm }: typeof before): StripEffect => ({
    turns: known(turns),
    fill: known(fill),
    hours: known(hours),
    clearanceMm: known(clearanceMm),
  })
  const verdicts = [height, thickness, length].map(({ verdict }) => verdict)
  const foreign = verdicts.some((verdict) => verdict === 'more' || verdict === 'less') || end === 'no-hold'
  const alike = verdicts.filter((verdict) => verdict === 'same').length
  const unsure = verdicts.some((verdict) => verdict === 'cannot-tell') || end === 'alike'
  return {
    verdict: foreign ? 'foreign' : unsure || alike === 0 ? 'cannot-tell' : 'specified',
    height,
    thickness,
    length,
    end,
    specified: effect(before),
    found: effect(after),
    torqueRate: known(after.torqueRate),
    torqueFullWind: known(after.torqueFullWind),
  }
}
