import { positive } from './positive.ts'
import type { Strip } from './spring-torque.ts'

/**
 * Torque that a strip of known stiffness gains in each turn.
 *
 * c = π E h e³ / (6 L).
 * Units: mm and N/mm² in; N·mm a turn out.
 * @validity A bare strip bent evenly, coils clear of one another, no friction. Never to be claimed of a mainspring in its
 * barrel: its torque depends on its free shape, on coil friction and on the wall, so that only ratios hold there.
 * @source M = E h e³ θ / (12 L): SMI, Handbook of Spring Design, and The Theory of Horology, both at second hand; the turn is derived here.
 * @throws OutsideRange where a size or the modulus is not above zero.
 * @example
 * torquePerTurn({ heightMm: 1.5, thicknessMm: 0.1, lengthMm: 400 }, 210000) // 0.412334
 */
export const torquePerTurn = ({ heightMm, thicknessMm, lengthMm }: Strip, modulusNPerMm2: number): number =>
  (Math.PI *
    positive('modulusNPerMm2', modulusNPerMm2) *
    positive('springHeightMm', heightMm) *
    positive('springThicknessMm', thicknessMm) ** 3) /
  (6 * positive('springLengthMm', lengthMm))

/**
 * Torque at which the surface of a strip reaches a stress.
 *
 * M = σ h e² / 6.
 * Units: mm and N/mm² in; N·mm out.
 * @validity A bare strip bent evenly, as one held at its outer end; one that is only pinned there reaches the stress at half of it.
 * @source σ = 6 M / (h e²): SMI, Handbook of Spring Design, and The Theory of Horology, both at second hand.
 * @throws OutsideRange where a size or the stress is not above zero.
 * @example
 * torqueAtStress({ heightMm: 1.5, thicknessMm: 0.1 }, 2000) // 5
 */
export const torqueAtStress = ({ heightMm, thicknessMm }: Omit<Strip, 'lengthMm'>, stressNPerMm2: number): number =>
  (positive('stressNPerMm2', stressNPerMm2) *
    positive('springHeightMm', heightMm) *
    positive('springThicknessMm', thicknessMm) ** 2) /
  6

/**
 * Turns from its free shape at which the surface of a strip reaches a stress.
 *
 * n = σ L / (π E e).
 * Units: mm and N/mm² in; turns out.
 * @validity A bare strip bent evenly, elastic up to that stress; turns are counted from the free shape, not from let down.
 * @source M = E h e³ θ / (12 L) and σ = 6 M / (h e²), as above; their quotient is derived here.
 * @throws OutsideRange where a size, the stress or the modulus is not above zero.
 * @example
 * turnsToStress({ thicknessMm: 0.1, lengthMm: 349.066 }, 2000, 210000) // 10.582
 */
export const turnsToStress = (
  { thicknessMm, lengthMm }: Omit<Strip, 'heightMm'>,
  stressNPerMm2: number,
  modulusNPerMm2: number,
): number =>
  (positive('stressNPerMm2', stressNPerMm2) * positive('springLengthMm', lengthMm)) /
  (Math.PI * positive('modulusNPerMm2', modulusNPerMm2) * positive('springThicknessMm', thicknessMm))
