import { positive } from './positive.ts'

/**
 * Moment of inertia of a thin ring about its middle.
 *
 * I = m r².
 * Units: mass in mg, radius in mm, I in mg·cm².
 * @validity A rim that is thin against its radius; arms and screws are left out.
 * @source Any physics text.
 * @throws OutsideRange where a figure is not above zero.
 * @example
 * inertiaOfRing(100, 5) // 25
 */
export const inertiaOfRing = (massMg: number, radiusMm: number): number =>
  positive('massMg', massMg) * (positive('radiusMm', radiusMm) / 10) ** 2
