import { positive } from './positive.ts'

/**
 * Stiffness of a hairspring from the torque that holds it at an angle.
 *
 * k = M / φ.
 * Units: torque M in N·m, angle φ in degrees, k in N·m per radian.
 * @validity Angles at which the torque grows evenly.
 * @source Any physics text.
 * @throws OutsideRange where a figure is not above zero.
 * @example
 * 1e5 * stiffnessFromTorque(1.1e-5, 45) // 1.40056
 */
export const stiffnessFromTorque = (torqueNm: number, angleDeg: number): number =>
  positive('torqueNm', torqueNm) / ((positive('angleDeg', angleDeg) * Math.PI) / 180)
