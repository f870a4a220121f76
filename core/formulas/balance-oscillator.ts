import { positive } from './positive.ts'
import { rateForms, vibrationsPerHour } from './rate-forms.ts'

/** Kilograms times square metres in one milligram times square centimetre. */
const kgM2PerMgCm2 = 1e-10

const angularSpeed = (beatRateVph: number): number => 2 * Math.PI * rateForms(beatRateVph).hertz

/**
 * Beat rate of a balance on its hairspring.
 *
 * T = 2π √(I / k), n = 7200 / T.
 * Units: moment of inertia I in mg·cm², stiffness k in N·m per radian, n in vibrations per hour.
 * @validity A balance swinging freely on a spring whose torque grows evenly with the angle; without air, friction and
 * the escapement, which shift the rate by seconds a day.
 * @source E. Beckett, A Rudimentary Treatise on Clocks, Watches, and Bells, 8th ed., 1903, p. 299 (which way each acts);
 * the law of the torsion oscillator, in any physics text.
 * @throws OutsideRange where a figure is not above zero.
 * @example
 * rateOfBalance(16, 3.94784176e-7) // 18000
 */
export const rateOfBalance = (inertiaMgCm2: number, stiffnessNmPerRad: number): number => {
  const inertia = positive('inertiaMgCm2', inertiaMgCm2) * kgM2PerMgCm2
  return vibrationsPerHour(Math.sqrt(positive('stiffnessNmPerRad', stiffnessNmPerRad) / inertia) / (2 * Math.PI))
}

/**
 * Stiffness of the hairspring that gives a balance its beat rate.
 *
 * k = I (2π n / 7200)².
 * Units: I in mg·cm², n in vibrations per hour, k in N·m per radian.
 * @validity As for the rate of a balance.
 * @source The same law, solved for the stiffness.
 * @throws OutsideRange where a figure is not above zero.
 * @example
 * 1e7 * stiffnessForRate(16, 18000) // 3.94784
 */
export const stiffnessForRate = (inertiaMgCm2: number, beatRateVph: number): number =>
  positive('inertiaMgCm2', inertiaMgCm2) * kgM2PerMgCm2 * angularSpeed(beatRateVph) ** 2

/**
 * Moment of inertia of the balance to which a hairspring gives the beat rate.
 *
 * I = k / (2π n / 7200)².
 * Units: k in N·m per radian, n in vibrations per hour, I in mg·cm².
 * @validity As for the rate of a balance.
 * @source The same law, solved for the moment of inertia.
 * @throws OutsideRange where a figure is not above zero.
 * @example
 * inertiaForRate(3.94784176e-7, 18000) // 16
 */
export const inertiaForRate = (stiffnessNmPerRad: number, beatRateVph: number): number =>
  positive('stiffnessNmPerRad', stiffnessNmPerRad) / angularSpeed(beatRateVph) ** 2 / kgM2PerMgCm2
