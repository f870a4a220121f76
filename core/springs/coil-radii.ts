import { type BarrelSizes, springCoils } from '../formulas/barrel.ts'

/** Coils of strip that lie close upon one another between two radii. */
export interface CoilPack {
  readonly innerMm: number
  readonly outerMm: number
  /** Parts of a coil included. */
  readonly coils: number
}

/** How the strip lies at some state of winding: part of it still against the wall, part of it round the hub. */
export interface CoilPacks {
  readonly wall: CoilPack
  readonly hub: CoilPack
}

/**
 * Where the strip lies when it is wound some turns, from 0 (let down) to the theoretical turns (wound).
 *
 * Each turn makes one coil more in all, and the strip keeps its area: with x the outer radius of the pack on the hub and y
 * the inner radius of the pack on the wall, y² − x² is the free area ÷ π, and y − x falls by one thickness a turn.
 * Turns beyond both ends are taken for the end.
 * @throws OutsideRange where the sizes do not go together.
 * @example
 * coilPacks({ barrelInsideMm: 12, barrelArborMm: 4, springThicknessMm: 0.12, springLengthMm: 400 }, 0).wall.coils // 12.0663
 */
export const coilPacks = (sizes: BarrelSizes, turnsWound: number): CoilPacks => {
  const { turns } = springCoils(sizes)
  const { springThicknessMm: e, springLengthMm } = sizes
  const wall = sizes.barrelInsideMm / 2
  const hub = sizes.barrelArborMm / 2
  const stripArea = (springLengthMm * e) / Math.PI
  const letDown = Math.sqrt(wall ** 2 - stripArea)
  const open = wall ** 2 - hub ** 2 - stripArea
  const gap = letDown - hub - e * Math.min(Math.max(turnsWound, 0), turns)
  const outerOfHub = (open / gap - gap) / 2
  const innerOfWall = (open / gap + gap) / 2
  return {
    wall: { innerMm: innerOfWall, outerMm: wall, coils: (wall - innerOfWall) / e },
    hub: { innerMm: hub, outerMm: outerOfHub, coils: (outerOfHub - hub) / e },
  }
}

/** One coil as a ring: where its strip lies, and how much of the round it takes. */
export interface Coil {
  readonly radiusMm: number
  /** 1 for a whole coil, less for the last one. */
  readonly share: number
}

/** Less than this of a round is not a coil. */
const noCoil = 1e-6

/**
 * The coils of a pack, laid from the wall inwards or from the hub outwards; the last is a part of a round.
 * @example
 * coilsOf({ innerMm: 2, outerMm: 2.3, coils: 1.5 }, 0.2, 'outwards') // [{ radiusMm: 2.1, share: 1 }, { radiusMm: 2.3, share: 0.5 }]
 */
export const coilsOf = (pack: CoilPack, thicknessMm: number, laid: 'inwards' | 'outwards'): readonly Coil[] =>
  Array.from({ length: Math.ceil(pack.coils - noCoil) }, (_, index) => ({
    radiusMm:
      laid === 'outwards' ? pack.innerMm + (index + 0.5) * thicknessMm : pack.outerMm - (index + 0.5) * thicknessMm,
    share: Math.min(1, pack.coils - index),
  }))
