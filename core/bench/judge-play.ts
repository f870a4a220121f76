import { wornOutSideShake } from '../formulas/worn-out-side-shake.ts'
import type { Measured } from '../quantities/measured.ts'
import { againstLimits, type Limits, type LimitVerdict } from './against-limits.ts'
import type { PlayPlace } from './play-places.ts'
import { type PlayMeasure, type PlayMovement, type PlayStandard, playStandard } from './play-standard.ts'

export type PlayRemark =
  | 'called-too-close'
  | 'called-too-great'
  | 'called-detrimental'
  | 'called-less-harmful'
  | 'pin-may-strike'
  | 'wide-needs-no-cure'
  | 'worn-out'
  | 'perhaps-worn-out'

/** Where a play lies; without a figure in print it is not judged. */
export type PlayVerdict = LimitVerdict | 'no-figure'

/** What a measured play comes to. */
export interface PlayFinding {
  readonly place: PlayPlace
  readonly measure: PlayMeasure
  readonly measured: Measured
  readonly standard: PlayStandard
  readonly verdict: PlayVerdict
  readonly remarks: readonly PlayRemark[]
}

/** What was measured of one play, and on what. */
export interface PlayAsked {
  readonly movement: PlayMovement
  readonly place: PlayPlace
  readonly measure: PlayMeasure
  readonly measured: Measured
  readonly maker?: Limits | undefined
  /** The pivot, where it was measured. */
  readonly pivotMm?: number | undefined
}

interface PrintedCase {
  readonly place: PlayPlace
  readonly measure: PlayMeasure
  readonly verdict: 'below' | 'above'
  readonly holds: (mm: number) => boolean
  readonly remark: PlayRemark
}

/**
 * Single plays that the book names as it found them in cheaper watches.
 * @source W. J. Kleinlein, Rules and Practice for Adjusting Watches, 1920, p. 35.
 */
const printedCases: readonly PrintedCase[] = [
  { place: 'centre', measure: 'end', verdict: 'below', holds: (mm) => mm <= 0.02, remark: 'called-too-close' },
  { place: 'centre', measure: 'side', verdict: 'below', holds: (mm) => mm <= 0.01, remark: 'called-too-close' },
  { place: 'fourth', measure: 'end', verdict: 'above', holds: (mm) => mm >= 0.08, remark: 'called-too-great' },
  { place: 'fourth', measure: 'side', verdict: 'above', holds: (mm) => mm >= 0.03, remark: 'called-too-great' },
  { place: 'balance', measure: 'end', verdict: 'below', holds: (mm) => mm <= 0.01, remark: 'called-detrimental' },
  { place: 'lever', measure: 'end', verdict: 'above', holds: (mm) => mm <= 0.05, remark: 'called-less-harmful' },
]

const ofTheEscapement: readonly PlayPlace[] = ['escape', 'lever', 'balance']

const remarksOf = (asked: PlayAsked, standard: PlayStandard, verdict: PlayVerdict): readonly PlayRemark[] => {
  const { movement, place, measure, measured, pivotMm } = asked
  const remarks: PlayRemark[] = []
  if (standard.by === 'fine-watches') {
    for (const one of printedCases)
      if (one.place === place && one.measure === measure && one.verdict === verdict && one.holds(measured.value))
        remarks.push(one.remark)
    const pinMayStrike = movement === 'watch' && measure === 'side' && ofTheEscapement.includes(place)
    if (verdict === 'above' && pinMayStrike) remarks.push('pin-may-strike')
    else if (verdict === 'above' && remarks.length === 0) remarks.push('wide-needs-no-cure')
  }
  if (movement === 'clock' && measure === 'side' && pivotMm !== undefined) {
    const worn = wornOutSideShake(pivotMm)
    if (measured.low >= worn) remarks.push('worn-out')
    else if (measured.high >= worn) remarks.push('perhaps-worn-out')
  }
  return remarks
}

/**
 * Judges one play with what it may be off: within, below or above what the maker states or the books print, or not to be
 * told.
 * @example
 * judgePlay({ movement: 'watch', place: 'balance', measure: 'end', measured: { value: 0.01, low: 0.005, high: 0.015 } }).remarks // ['called-detrimental']
 */
export const judgePlay = (asked: PlayAsked): PlayFinding => {
  const { movement, place, measure, measured } = asked
  const standard = playStandard(movement, place, measure, asked)
  const verdict = 'limits' in standard ? againstLimits(measured, standard.limits) : 'no-figure'
  return { place, measure, measured, standard, verdict, remarks: remarksOf(asked, standard, verdict) }
}

/**
 * Whether one pivot of an arbor is wide and the other close: the close one then binds as soon as the power comes on.
 * @source W. J. Kleinlein, Rules and Practice for Adjusting Watches, 1920, p. 35.
 * @example
 * pivotsUneven('above', 'below') // true
 */
export const pivotsUneven = (upper: PlayVerdict | undefined, lower: PlayVerdict | undefined): boolean =>
  (upper === 'above' && lower === 'below') || (upper === 'below' && lower === 'above')
