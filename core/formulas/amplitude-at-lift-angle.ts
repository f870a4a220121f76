import { positive } from './positive.ts'

/**
 * Amplitude that an instrument set to another lift angle would show for the same swing.
 *
 * A' = A × λ' / λ.
 * Units: degrees.
 * @validity The same lift time, by either formula: both are proportional to the lift angle.
 * @source Derived here from A = λ / (2 sin(π t n / 7200)).
 * @throws OutsideRange where an angle is not above zero.
 * @example
 * amplitudeAtLiftAngle(270, 52, 51) // 264.808
 */
export const amplitudeAtLiftAngle = (amplitudeDeg: number, liftAngleDeg: number, otherLiftAngleDeg: number): number =>
  (positive('amplitudeDeg', amplitudeDeg) * positive('liftAngleDeg', otherLiftAngleDeg)) /
  positive('liftAngleDeg', liftAngleDeg)
