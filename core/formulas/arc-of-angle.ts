import { positive } from './positive.ts'

/**
 * Length of arc that an angle of play makes at a given diameter.
 *
 * a = π d θ / 360.
 * Units: degrees and mm in, mm out, measured along the arc.
 * @validity Any angle about a centre; the drop is measured about the escape wheel, the freedom of the impulse pin about
 * the pallet staff, so that its diameter is twice the acting length of the fork.
 * @source H. R. Playtner, An Analysis of the Lever Escapement, 1910, pp. 4, 13, 30.
 * @throws OutsideRange where the angle or the diameter is not above zero.
 * @example
 * arcOfAngle(1, 7.5) // 0.06545
 */
export const arcOfAngle = (angleDeg: number, diameterMm: number): number =>
  (Math.PI * positive('diameterMm', diameterMm) * positive('angleDeg', angleDeg)) / 360
