import { positive } from './positive.ts'

/**
 * Lift angle at the balance that follows from the angle of contact at the fork.
 *
 * λ = fork angle × (fork length / roller radius).
 * Units: degrees in and out; the ratio is a pure number.
 * @validity Lever escapements, with the angle of contact counted as lift, lock and run together.
 * @source H. R. Playtner, An Analysis of the Lever Escapement, 1910, p. 28; Watch and Clock Escapements, compiled from
 * The Keystone (date from memory, 1904), p. 55.
 * @throws OutsideRange where the angle or the ratio is not above zero.
 * @example
 * liftAngleOfFork(10.5, 3) // 31.5
 */
export const liftAngleOfFork = (forkAngleDeg: number, leverRatio: number): number =>
  positive('forkAngleDeg', forkAngleDeg) * positive('leverRatio', leverRatio)
