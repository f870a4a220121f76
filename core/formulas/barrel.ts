import { OutsideRange } from './outside-range.ts'
import { positive } from './positive.ts'

/** The four sizes that fix the coils in a barrel. */
export interface BarrelSizes {
  readonly barrelInsideMm: number
  /** Diameter of the hub that the spring winds on, not of the pivot. */
  readonly barrelArborMm: number
  readonly springThicknessMm: number
  readonly springLengthMm: number
}

const freeArea = ({ barrelInsideMm, barrelArborMm }: Omit<BarrelSizes, 'springThicknessMm' | 'springLengthMm'>) => {
  positive('barrelInsideMm', barrelInsideMm)
  positive('barrelArborMm', barrelArborMm)
  if (barrelArborMm >= barrelInsideMm) throw new OutsideRange('arbor-fills-barrel', { barrelInsideMm, barrelArborMm })
  return (Math.PI * (barrelInsideMm ** 2 - barrelArborMm ** 2)) / 4
}

/**
 * Share of the free space that the spring takes up, seen from above.
 *
 * f = L × e / (π (R² − r²)).
 * Units: mm in; f is a pure number, 0.5 at the most turns.
 * @validity Flat springs in round barrels. Above 1 the spring cannot be got in; the figure is still given.
 * @source W. L. Goodrich, The Modern Clock, 1905, pp. 280–281 (the rule of half the space); geometry derived here.
 * @throws OutsideRange where the arbor is as large as the barrel, or a size is not above zero.
 * @example
 * springFill({ barrelInsideMm: 12, barrelArborMm: 4, springThicknessMm: 0.12, springLengthMm: 400 }) // 0.47746
 */
export const springFill = (sizes: BarrelSizes): number =>
  (positive('springLengthMm', sizes.springLengthMm) * positive('springThicknessMm', sizes.springThicknessMm)) /
  freeArea(sizes)

/**
 * Coils of the spring let down against the wall and wound on the arbor, and the turns between the two.
 *
 * down = (R − √(R² − L e / π)) / e, wound = (√(r² + L e / π) − r) / e, turns = wound − down.
 * Units: mm in; coils and turns out.
 * @validity Ring model: coils lie as closed rings, as in a round barrel, where a coil steps over its own end. These are
 * theoretical (development) turns; the usable ones are fewer.
 * @source W. L. Goodrich, The Modern Clock, 1905, p. 281 (turns are the difference of the coils); geometry derived here.
 * @throws OutsideRange where the spring takes all the free space or more, the arbor fills the barrel, or a size is not above zero.
 * @example
 * springCoils({ barrelInsideMm: 12, barrelArborMm: 4, springThicknessMm: 0.12, springLengthMm: 400 }).turns // 7.8568
 */
export const springCoils = (sizes: BarrelSizes): { down: number; wound: number; turns: number } => {
  const fill = springFill(sizes)
  if (fill >= 1) throw new OutsideRange('spring-overfills-barrel', { fill })
  const { springThicknessMm: e } = sizes
  const stripArea = (sizes.springLengthMm * e) / Math.PI
  const wall = sizes.barrelInsideMm / 2
  const hub = sizes.barrelArborMm / 2
  const down = (wall - Math.sqrt(wall ** 2 - stripArea)) / e
  const wound = (Math.sqrt(hub ** 2 + stripArea) - hub) / e
  return { down, wound, turns: wound - down }
}

/**
 * Length of spring that gives the most turns in a barrel.
 *
 * L = π (D² − d²) / (8 e): the strip then covers half the free space.
 * Units: mm.
 * @validity Ring model, as for the coils.
 * @source W. L. Goodrich, The Modern Clock, 1905, pp. 280–281; geometry derived here.
 * @throws OutsideRange where the arbor is as large as the barrel, or a size is not above zero.
 * @example
 * bestSpringLength({ barrelInsideMm: 12, barrelArborMm: 4, springThicknessMm: 0.12 }) // 418.879
 */
export const bestSpringLength = (sizes: Omit<BarrelSizes, 'springLengthMm'>): number =>
  freeArea(sizes) / (2 * positive('springThicknessMm', sizes.springThicknessMm))

/**
 * Most turns that any length of a spring of this thickness gives in a barrel.
 *
 * N = (√(2 (D² + d²)) − (D + d)) / (2 e).
 * Units: mm in; turns out.
 * @validity Ring model, theoretical (development) turns.
 * @source W. L. Goodrich, The Modern Clock, 1905, pp. 280–281; geometry derived here.
 * @throws OutsideRange where the arbor is as large as the barrel, or a size is not above zero.
 * @example
 * mostTurns({ barrelInsideMm: 9, barrelArborMm: 2.6, springThicknessMm: 0.085 }) // 9.6964
 */
export const mostTurns = (sizes: Omit<BarrelSizes, 'springLengthMm'>): number => {
  freeArea(sizes)
  const { barrelInsideMm: inside, barrelArborMm: arbor } = sizes
  const thickness = positive('springThicknessMm', sizes.springThicknessMm)
  return (Math.sqrt(2 * (inside ** 2 + arbor ** 2)) - (inside + arbor)) / (2 * thickness)
}

/**
 * Inside diameter that is left where a slipping bridle lines the wall.
 *
 * D' = D − 2 × bridle thickness.
 * Units: mm.
 * @validity Self-winding barrels with a slipping bridle that runs round the wall.
 * @source common practice; derived here.
 * @throws OutsideRange where the bridle leaves no space.
 * @example
 * insideWithinBridle(10, 0.12) // 9.76
 */
export const insideWithinBridle = (barrelInsideMm: number, bridleThicknessMm: number): number => {
  const inside = barrelInsideMm - 2 * bridleThicknessMm
  if (!(inside > 0)) throw new OutsideRange('bridle-fills-barrel', { barrelInsideMm, bridleThicknessMm })
  return inside
}
