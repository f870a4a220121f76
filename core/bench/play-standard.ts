import { cylinderSideShake } from '../formulas/cylinder-pivot.ts'
import type { Limits } from './against-limits.ts'
import { type PlayPlace, type PlayPlaceDef, playPlaces } from './play-places.ts'

/** What kind of movement is on the bench; each has its own figures in print. A plain watch has a lever. */
export type PlayMovement = 'watch' | 'cylinder' | 'other-watch' | 'clock'
/** Along the arbor, or across the hole of one pivot. */
export type PlayMeasure = 'end' | 'side'

/** What a measured play is held against. */
export type PlayStandard =
  | { readonly by: 'maker' | 'fine-watches' | 'clock-pivots' | 'cylinder-pivots'; readonly limits: Limits }
  | { readonly by: 'words'; readonly words: 'just-free' | 'merely-free' }
  | { readonly by: 'pivot-wanted' }
  | { readonly by: 'nothing' }

const inchMm = 25.4

/**
 * Side-shake of the pivots of a clock, 0.002 to 0.004 inch; cuckoos and others with weights and pendulum in the open
 * have more.
 */
export const clockSideShake: Limits = { low: 0.002 * inchMm, high: 0.004 * inchMm }
export const clockPlaySource = 'W. L. Goodrich, The Modern Clock, 1905, p. 199'

/** The book speaks of pivots in the plates: not of a barrel on its arbor, nor of a balance, which is watch work. */
const notInThePlates: readonly PlayPlace[] = ['barrel', 'balance']

const ofClock = (place: PlayPlace, measure: PlayMeasure): PlayStandard =>
  measure === 'side' && !notInThePlates.includes(place)
    ? { by: 'clock-pivots', limits: clockSideShake }
    : { by: 'nothing' }

const ofCylinder = (pivotMm: number | undefined): PlayStandard =>
  pivotMm === undefined
    ? { by: 'pivot-wanted' }
    : { by: 'cylinder-pivots', limits: { low: cylinderSideShake(pivotMm), high: Number.POSITIVE_INFINITY } }

/**
 * What the play of a place is held against: the maker's figure where it is given, else what is in print for the kind of
 * movement. The rule for a cylinder goes by the size of its pivot.
 * @example
 * playStandard('watch', 'third', 'end', {}) // { by: 'fine-watches', limits: { low: 0.03, high: 0.05 } }
 */
export const playStandard = (
  movement: PlayMovement,
  place: PlayPlace,
  measure: PlayMeasure,
  { maker, pivotMm }: { readonly maker?: Limits | undefined; readonly pivotMm?: number | undefined },
): PlayStandard => {
  if (maker !== undefined) return { by: 'maker', limits: maker }
  if (movement === 'clock') return ofClock(place, measure)
  if (movement === 'cylinder' && place === 'balance' && measure === 'side') return ofCylinder(pivotMm)
  const def: PlayPlaceDef = playPlaces[place]
  const printed = def[measure]
  if (printed === undefined) return { by: 'nothing' }
  return typeof printed === 'string' ? { by: 'words', words: printed } : { by: 'fine-watches', limits: printed }
}
