/** A ring of strip between two radii, with the radii at which its coils lie. Millimetres. */
export interface CoilRing {
  readonly inner: number
  readonly outer: number
  readonly coils: readonly number[]
}

interface RingSizes {
  readonly barrelInsideMm: number
  readonly barrelArborMm: number
  readonly springThicknessMm: number
  readonly springLengthMm: number
}

const coilsBetween = (inner: number, outer: number, thickness: number): number[] =>
  Array.from(
    { length: Math.max(0, Math.round((outer - inner) / thickness)) },
    (_, index) => inner + (index + 0.5) * thickness,
  )

/**
 * The strip lying partly against the wall and partly round the hub: `wound` is the share of its length round the hub,
 * from 0 (let down) to 1 (wound). Strip keeps its area: L·e.
 */
export const coilRings = (sizes: RingSizes, wound: number): { wall: CoilRing; hub: CoilRing } => {
  const { springThicknessMm: e, springLengthMm } = sizes
  const wall = sizes.barrelInsideMm / 2
  const hub = sizes.barrelArborMm / 2
  const area = (springLengthMm * e) / Math.PI
  const within = Math.sqrt(Math.max(hub ** 2, wall ** 2 - area * (1 - wound)))
  const round = Math.sqrt(Math.min(wall ** 2, hub ** 2 + area * wound))
  return {
    wall: { inner: within, outer: wall, coils: coilsBetween(within, wall, e) },
    hub: { inner: hub, outer: round, coils: coilsBetween(hub, round, e) },
  }
}
