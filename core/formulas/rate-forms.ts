import { positive } from './positive.ts'

/** A beat rate in the forms in which books and instruments give it. */
export interface RateForms {
  /** Whole oscillations a second. */
  readonly hertz: number
  readonly beatsPerSecond: number
  readonly beatsPerMinute: number
  /** Duration of one vibration, a single beat. */
  readonly vibrationMs: number
  /** Duration of one oscillation, there and back. */
  readonly oscillationMs: number
}

/**
 * A beat rate in its other forms.
 *
 * f = n / 7200, beats a second n / 3600, beats a minute n / 60, vibration 3600 / n s, oscillation T = 7200 / n s.
 * Units: n in vibrations per hour; hertz, beats, milliseconds out.
 * @validity Any balance or pendulum; two vibrations are one oscillation.
 * @source W. L. Goodrich, The Modern Clock, 1905, p. 192 (whole oscillations counted); definition.
 * @throws OutsideRange where the rate is not above zero.
 * @example
 * rateForms(18000) // { hertz: 2.5, beatsPerSecond: 5, beatsPerMinute: 300, vibrationMs: 200, oscillationMs: 400 }
 */
export const rateForms = (beatRateVph: number): RateForms => {
  const rate = positive('beatRateVph', beatRateVph)
  return {
    hertz: rate / 7200,
    beatsPerSecond: rate / 3600,
    beatsPerMinute: rate / 60,
    vibrationMs: 3_600_000 / rate,
    oscillationMs: 7_200_000 / rate,
  }
}

/**
 * Vibrations per hour of a frequency.
 *
 * n = 7200 f.
 * Units: f in hertz (whole oscillations a second), n in vibrations per hour.
 * @validity Any balance or pendulum.
 * @source Definition: two vibrations are one oscillation.
 * @throws OutsideRange where the frequency is not above zero.
 * @example
 * vibrationsPerHour(2.5) // 18000
 */
export const vibrationsPerHour = (hertz: number): number => 7200 * positive('hertz', hertz)
