import { OutsideRange } from './outside-range.ts'
import { positive } from './positive.ts'

/**
 * Thickness of the strip that gives so many turns at the best length.
 *
 * e = (√(2 (D² + d²)) − (D + d)) / (2 N).
 * Units: mm in; N in theoretical (development) turns; mm out.
 * @validity Ring model, a spring that fills half of the free space.
 * @source W. L. Goodrich, The Modern Clock, 1905, pp. 280–281, for the rule of half the space; geometry derived here.
 * @throws OutsideRange where the arbor is as large as the barrel, or a figure is not above zero.
 * @example
 * thicknessForTurns(11.5, 3.6, 7.5) // 0.12945
 */
export const thicknessForTurns = (barrelInsideMm: number, barrelArborMm: number, turns: number): number => {
  const inside = positive('barrelInsideMm', barrelInsideMm)
  const arbor = positive('barrelArborMm', barrelArborMm)
  if (arbor >= inside) throw new OutsideRange('arbor-fills-barrel', { barrelInsideMm, barrelArborMm })
  return (Math.sqrt(2 * (inside ** 2 + arbor ** 2)) - (inside + arbor)) / (2 * positive('turns', turns))
}
