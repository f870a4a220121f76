import { positive } from './positive.ts'

/** What can be changed on balance and hairspring. */
export type RegulatedPart = 'inertia' | 'stiffness' | 'length'

/** How the rate follows each: with its root, or with the root of its inverse. */
const exponents: Readonly<Record<RegulatedPart, number>> = { inertia: -0.5, stiffness: 0.5, length: -0.5 }
const secondsPerDay = 86_400

/**
 * Seconds a day by which the rate changes with the balance’s inertia, the hairspring’s stiffness or its active length.
 *
 * d = 86 400 × (√(k'/k) − 1), and with the inverse for inertia and length; near enough ± 43 200 × the share of change.
 * Units: share of change as a pure number (0.01 is one hundredth more); result in seconds a day, a gain being positive.
 * @validity A balance swinging freely; the stiffness of a spring of even strip is inverse to its length. Share above −1.
 * @source E. Beckett, A Rudimentary Treatise on Clocks, Watches, and Bells, 8th ed., 1903, p. 299 (which way each acts);
 * Encyclopaedia Britannica, 11th ed., “Clock” (1/43 200 of the length for one second a day, of a pendulum).
 * @throws OutsideRange where nothing of the part would be left.
 * @example
 * gainFromChange('length', 0.01) // -428.787
 */
export const gainFromChange = (part: RegulatedPart, share: number): number =>
  secondsPerDay * (positive(part, 1 + share) ** exponents[part] - 1)

/**
 * Share by which inertia, stiffness or length must change for the rate to change by so much.
 *
 * k'/k = (1 + d / 86 400)², and the inverse for inertia and length; near enough ± d / 43 200.
 * Units: seconds a day in, a gain being positive; share of change out.
 * @validity As for the gain from a change; a loss of less than a whole day.
 * @source The same relation, solved for the share.
 * @throws OutsideRange where the rate would come to nothing.
 * @example
 * 100 * changeForGain('inertia', -45) // 0.10425
 */
export const changeForGain = (part: RegulatedPart, gainSecondsPerDay: number): number =>
  positive('beatRateVph', 1 + gainSecondsPerDay / secondsPerDay) ** (1 / exponents[part]) - 1
