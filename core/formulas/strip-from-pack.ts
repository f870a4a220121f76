import { OutsideRange } from './outside-range.ts'
import { positive } from './positive.ts'

/**
 * Thickness and length of a let-down spring that is still in its barrel, from its coils and the width of the pack.
 *
 * e = p / n, L = π n (D − p).
 * Units: mm in and out; n coils, parts of a coil included.
 * @validity Ring model: coils that lie close against the wall. Coils that stand apart make the strip seem thick.
 * @source Mean circumference times coils; derived here.
 * @throws OutsideRange where a figure is not above zero, or the pack reaches the middle.
 * @example
 * stripFromPack(20, 2.5, 10).lengthMm // 549.779
 */
export const stripFromPack = (
  barrelInsideMm: number,
  packMm: number,
  coils: number,
): { thicknessMm: number; lengthMm: number } => {
  const inside = positive('barrelInsideMm', barrelInsideMm)
  const pack = positive('packMm', packMm)
  if (2 * pack >= inside) throw new OutsideRange('pack-fills-barrel', { barrelInsideMm, packMm })
  return { thicknessMm: pack / positive('coils', coils), lengthMm: Math.PI * coils * (inside - pack) }
}
