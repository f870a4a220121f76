import type { Limits } from '../../../core/bench/against-limits.ts'
import {
  type FreedomFinding,
  judgeFreedom,
  type LeverFreedom,
  type LockLeft,
  leverFreedomKeys,
  leverFreedoms,
  lockLeft,
} from '../../../core/bench/lever-freedoms.ts'
import { arcOfAngle } from '../../../core/formulas/arc-of-angle.ts'
import type { PlayTyped } from './play-place.ts'
import { type TypedMeasured, typedMeasured } from './typed-measured.ts'

/** One freedom of the lever escapement as typed and as judged. */
export interface FreedomRead {
  readonly freedom: LeverFreedom
  readonly figure: TypedMeasured
  readonly limits: Limits
  readonly finding: FreedomFinding | undefined
  /** The angle as an arc, where the diameter that it is measured on is known. */
  readonly arcMm: number | undefined
}

export interface LeverRead {
  readonly off: TypedMeasured
  readonly wheel: TypedMeasured
  readonly fork: TypedMeasured
  readonly freedoms: readonly FreedomRead[]
  readonly left: LockLeft | undefined
}

/** Degrees within which a freedom can be. */
const possibleDeg = [0, 10] as const
const possibleMm = [0.5, 60] as const

/** Reads and judges what was typed of the lever escapement. */
export const readLever = ({ tooth, offDeg, wheelMm, forkMm, freedoms }: PlayTyped): LeverRead => {
  const off = typedMeasured({ label: 'Angles may be off by', kind: 'angle', possible: possibleDeg }, offDeg, 0)
  const wheel = typedMeasured(
    { label: 'Diameter of the escape wheel', kind: 'length', possible: possibleMm },
    wheelMm,
    0,
  )
  const fork = typedMeasured({ label: 'Acting length of the fork', kind: 'length', possible: possibleMm }, forkMm, 0)
  const diameterOf = (freedom: LeverFreedom): number | undefined => {
    if (leverFreedoms[freedom].about === 'escape-wheel') return wheel.value
    return (freedom === 'edge' || freedom === 'slot') && fork.value !== undefined ? 2 * fork.value : undefined
  }
  const read = leverFreedomKeys.map((freedom): FreedomRead => {
    const { label, allowed } = leverFreedoms[freedom]
    const figure = typedMeasured({ label, kind: 'angle', possible: possibleDeg }, freedoms[freedom] ?? '', off.value)
    const diameter = diameterOf(freedom)
    return {
      freedom,
      figure,
      limits: allowed[tooth],
      finding: figure.measured && judgeFreedom(freedom, tooth, figure.measured),
      arcMm:
        figure.value === undefined || figure.value === 0 || diameter === undefined
          ? undefined
          : arcOfAngle(figure.value, diameter),
    }
  })
  const found = (freedom: LeverFreedom) => read.find((one) => one.freedom === freedom)?.figure.measured
  const [lock, run, edge] = [found('lock'), found('run'), found('edge')]
  return {
    off,
    wheel,
    fork,
    freedoms: read,
    left: lock && run && edge && lockLeft({ lock, run, edge }),
  }
}
