import { OutsideRange } from './outside-range.ts'
import { positive } from './positive.ts'

/**
 * Total swing of the balance from one turning point to the other.
 *
 * S = 2 A.
 * Units: degrees; amplitude A from the middle.
 * @validity Any balance in beat. Old books give the swing in turns: one and a half turns are 540°, an amplitude of 270°.
 * @source H. R. Playtner, An Analysis of the Lever Escapement, 1910, p. 28; W. J. Kleinlein, Rules and Practice for
 * Adjusting Watches, 1920, pp. 41–42.
 * @throws OutsideRange where the amplitude is not above zero.
 * @example
 * totalSwing(270) // 540
 */
export const totalSwing = (amplitudeDeg: number): number => 2 * positive('amplitudeDeg', amplitudeDeg)

/**
 * Supplementary arc: the part of a vibration in which the balance swings free of the fork.
 *
 * free = 2 A − λ.
 * Units: degrees.
 * @validity Detached escapements; λ is the lift angle, counted at the balance.
 * @source H. R. Playtner, An Analysis of the Lever Escapement, 1910, p. 28.
 * @throws OutsideRange where a figure is not above zero, or the swing ends within the lift angle.
 * @example
 * supplementaryArc(270, 27.5) // 512.5
 */
export const supplementaryArc = (amplitudeDeg: number, liftAngleDeg: number): number => {
  const free = totalSwing(amplitudeDeg) - positive('liftAngleDeg', liftAngleDeg)
  if (free < 0) throw new OutsideRange('swing-within-lift', { amplitudeDeg, liftAngleDeg })
  return free
}
