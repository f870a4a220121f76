import { OutsideRange } from './outside-range.ts'
import { positive } from './positive.ts'

/** What a timing instrument reckons the amplitude from. */
export interface LiftReading {
  readonly liftAngleDeg: number
  readonly beatRateVph: number
  /** Time from the noise of the unlocking to that of the drop. */
  readonly liftTimeMs: number
}

const millisecondsPerHour = 3_600_000

const held = ({ liftAngleDeg, beatRateVph, liftTimeMs }: LiftReading): LiftReading => {
  positive('liftAngleDeg', liftAngleDeg)
  positive('liftTimeMs', liftTimeMs)
  const longestMs = millisecondsPerHour / positive('beatRateVph', beatRateVph)
  if (liftTimeMs > longestMs) throw new OutsideRange('lift-outlasts-vibration', { liftTimeMs, longestMs, beatRateVph })
  return { liftAngleDeg, beatRateVph, liftTimeMs }
}

/**
 * Amplitude of the balance from the time it takes to cross the lift angle.
 *
 * A = λ / (2 sin(π t n / 7200)), t in seconds.
 * Units: lift angle λ and A in degrees from the middle; t in milliseconds; n in vibrations per hour.
 * @validity A balance that swings harmonically and crosses the lift angle evenly about its middle (in beat); t no longer
 * than one vibration, 3600/n seconds, where the amplitude is half the lift angle.
 * @source Derived here from x = A sin(2π t / T), T = 7200/n seconds.
 * @throws OutsideRange where a figure is not above zero, or the lift outlasts a vibration.
 * @example
 * amplitude({ liftAngleDeg: 52, beatRateVph: 18000, liftTimeMs: 12 }) // 276.2774
 */
export const amplitude = (reading: LiftReading): number => {
  const { liftAngleDeg, beatRateVph, liftTimeMs } = held(reading)
  return liftAngleDeg / (2 * Math.sin((Math.PI * liftTimeMs * beatRateVph) / (2 * millisecondsPerHour)))
}

/**
 * Amplitude by the usual formula, which takes the balance to cross the lift angle at its greatest speed throughout.
 *
 * A = 3600 λ / (π n t), t in seconds.
 * Units: as for the exact amplitude.
 * @validity Small lift angles against the amplitude: with 52° it reads 0.15 % low at 270° and 0.35 % low at 180°. Always
 * a little below the exact one.
 * @source common practice of timing instruments, from memory; derived here as the first term of the exact formula.
 * @throws OutsideRange where a figure is not above zero, or the lift outlasts a vibration.
 * @example
 * usualAmplitude({ liftAngleDeg: 52, beatRateVph: 18000, liftTimeMs: 12 }) // 275.8686
 */
export const usualAmplitude = (reading: LiftReading): number => {
  const { liftAngleDeg, beatRateVph, liftTimeMs } = held(reading)
  return (millisecondsPerHour * liftAngleDeg) / (Math.PI * beatRateVph * liftTimeMs)
}

/**
 * Time in which the balance crosses the lift angle at a given amplitude.
 *
 * t = 7200 / (π n) × arcsin(λ / 2A), in seconds.
 * Units: degrees in, vibrations per hour in, milliseconds out.
 * @validity As for the exact amplitude, whose inverse it is; the amplitude is at least half the lift angle.
 * @source Derived here from x = A sin(2π t / T), T = 7200/n seconds.
 * @throws OutsideRange where a figure is not above zero, or the swing ends within the lift angle.
 * @example
 * liftTime({ liftAngleDeg: 52, beatRateVph: 18000, amplitudeDeg: 270 }) // 12.27985
 */
export const liftTime = (swing: Omit<LiftReading, 'liftTimeMs'> & { readonly amplitudeDeg: number }): number => {
  const liftAngleDeg = positive('liftAngleDeg', swing.liftAngleDeg)
  const beatRateVph = positive('beatRateVph', swing.beatRateVph)
  const amplitudeDeg = positive('amplitudeDeg', swing.amplitudeDeg)
  if (2 * amplitudeDeg < liftAngleDeg) throw new OutsideRange('swing-within-lift', { amplitudeDeg, liftAngleDeg })
  return ((2 * millisecondsPerHour) / (Math.PI * beatRateVph)) * Math.asin(liftAngleDeg / (2 * amplitudeDeg))
}
