import { positive } from './positive.ts'

/** What of a strip decides its torque: its height and thickness and, for the rate, its length. */
export interface Strip {
  readonly heightMm: number
  readonly thicknessMm: number
  readonly lengthMm: number
}

/**
 * Torque that a strip gains in each turn, against another strip of the same alloy.
 *
 * (h e³ / L) ÷ (h₀ e₀³ / L₀).
 * Units: mm in; a pure number out, 1 for the same strip.
 * @validity Both wound the same number of turns from their free shape, with the coils clear of one another. A ratio
 * only: the torque itself cannot be had from the sizes, since it depends on the free shape.
 * @source M = E h e³ θ / (12 L), strip theory after SMI, Handbook of Spring Design (second-hand); the ratio is derived here.
 * @throws OutsideRange where a size is not above zero.
 * @example
 * torqueRateRatio({ heightMm: 1.5, thicknessMm: 0.11, lengthMm: 360 }, { heightMm: 1.5, thicknessMm: 0.105, lengthMm: 360 }) // 1.1498
 */
export const torqueRateRatio = (strip: Strip, specified: Strip): number => rate(strip) / rate(specified)

const rate = ({ heightMm, thicknessMm, lengthMm }: Strip): number =>
  (positive('springHeightMm', heightMm) * positive('springThicknessMm', thicknessMm) ** 3) /
  positive('springLengthMm', lengthMm)

/**
 * Torque of a strip at full wind, against another strip of the same alloy.
 *
 * (h e²) ÷ (h₀ e₀²).
 * Units: mm in; a pure number out, 1 for the same strip.
 * @validity Both formed so that they reach the same stress at full wind, as makers form them. A ratio only.
 * @source M = σ h e² / 6, strip theory after SMI, Handbook of Spring Design (second-hand); the ratio is derived here.
 * @throws OutsideRange where a size is not above zero.
 * @example
 * torqueFullWindRatio({ heightMm: 1.5, thicknessMm: 0.11 }, { heightMm: 1.5, thicknessMm: 0.105 }) // 1.0975
 */
export const torqueFullWindRatio = (strip: Omit<Strip, 'lengthMm'>, specified: Omit<Strip, 'lengthMm'>): number =>
  fullWind(strip) / fullWind(specified)

const fullWind = ({ heightMm, thicknessMm }: Omit<Strip, 'lengthMm'>): number =>
  positive('springHeightMm', heightMm) * positive('springThicknessMm', thicknessMm) ** 2
