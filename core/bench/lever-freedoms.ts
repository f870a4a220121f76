import type { Measured } from '../quantities/measured.ts'
import { plain } from '../quantities/plain.ts'
import { againstLimits, type Limits, type LimitVerdict } from './against-limits.ts'

/** The tooth of the escape wheel: a club shares the lift with the pallet, a ratchet is pointed. */
export type ToothForm = 'club' | 'ratchet'

export interface LeverFreedomDef {
  readonly label: string
  /** In degrees, as the book allows it; by the form of the tooth where that matters. */
  readonly allowed: Readonly<Record<ToothForm, Limits>>
  /** About what centre it is measured. */
  readonly about: 'escape-wheel' | 'pallet-staff'
  readonly page: string
}

/** A figure printed alone in quarters of a degree may lie an eighth either side, as any print lies half of its step. */
const quarterStep = 0.125
const printedAlone = (deg: number): Limits => ({ low: deg - quarterStep, high: deg + quarterStep })
const either = (limits: Limits): LeverFreedomDef['allowed'] => ({ club: limits, ratchet: limits })

/**
 * The freedoms of a lever escapement.
 * @source H. R. Playtner, An Analysis of the Lever Escapement, 1910, at the pages named.
 */
export const leverFreedoms = {
  lock: { label: 'Lock', allowed: either(printedAlone(1.5)), about: 'pallet-staff', page: '15' },
  run: { label: 'Run to the banking', allowed: either({ low: 0.25, high: 0.5 }), about: 'pallet-staff', page: '15' },
  drop: {
    label: 'Drop',
    allowed: { club: printedAlone(1.5), ratchet: printedAlone(2) },
    about: 'escape-wheel',
    page: '12',
  },
  edge: {
    label: 'Impulse pin at the acting edge of the fork',
    allowed: either({ low: 1, high: 1.25 }),
    about: 'pallet-staff',
    page: '30',
  },
  slot: {
    label: 'Impulse pin in the slot',
    allowed: either({ low: 0.25, high: 0.5 }),
    about: 'pallet-staff',
    page: '30',
  },
} as const satisfies Record<string, LeverFreedomDef>

export type LeverFreedom = keyof typeof leverFreedoms

export const leverFreedomKeys = Object.keys(leverFreedoms) as readonly LeverFreedom[]

export interface FreedomFinding {
  readonly freedom: LeverFreedom
  readonly measured: Measured
  readonly limits: Limits
  readonly verdict: LimitVerdict
}

/**
 * Judges one freedom of a lever escapement, in degrees, against what the book allows.
 * @example
 * judgeFreedom('drop', 'ratchet', { value: 2, low: 1.9, high: 2.1 }).verdict // 'within'
 */
export const judgeFreedom = (freedom: LeverFreedom, tooth: ToothForm, found: Measured): FreedomFinding => {
  const limits = leverFreedoms[freedom].allowed[tooth]
  return { freedom, measured: found, limits, verdict: againstLimits(found, limits) }
}

export interface LockLeft {
  readonly leftDeg: Measured
  readonly verdict: 'holds' | 'fails' | 'cannot-tell'
}

/**
 * What is left of the lock when a jar throws the fork against the impulse pin: lock and run together less the freedom at
 * the acting edge. It must be more than nothing, so that the draw takes the fork back to its banking.
 * @source H. R. Playtner, An Analysis of the Lever Escapement, 1910, p. 30.
 * @example
 * lockLeft({ lock: { value: 1.5, low: 1.5, high: 1.5 }, run: { value: 0.5, low: 0.5, high: 0.5 }, edge: { value: 1.25, low: 1.25, high: 1.25 } }) // { leftDeg: { value: 0.75, low: 0.75, high: 0.75 }, verdict: 'holds' }
 */
export const lockLeft = ({ lock, run, edge }: Readonly<Record<'lock' | 'run' | 'edge', Measured>>): LockLeft => {
  const leftDeg = {
    value: plain(lock.value + run.value - edge.value),
    low: plain(lock.low + run.low - edge.high),
    high: plain(lock.high + run.high - edge.low),
  }
  return { leftDeg, verdict: leftDeg.low > 0 ? 'holds' : leftDeg.high <= 0 ? 'fails' : 'cannot-tell' }
}
