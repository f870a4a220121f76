import type Fraction from 'fraction.js'
import { gearRatio } from './gear-ratio.ts'

interface MotionWork {
  readonly cannonPinion: number
  readonly minuteWheel: number
  readonly minutePinion: number
  readonly hourWheel: number
}

/**
 * Turns of the minute hand for one turn of the hour hand, exactly.
 *
 * i = (minute wheel / cannon pinion) × (hour wheel / minute pinion); the pinions drive here.
 * Units: counts of teeth and leaves in, turns per turn out.
 * @validity Motion work of two pairs on a cannon pinion that carries the minute hand.
 * @source W. L. Goodrich, The Modern Clock, 1905, p. 293; Encyclopaedia Britannica, 4th ed., 1810, “Clock”.
 * @example
 * motionWorkRatio({ cannonPinion: 12, minuteWheel: 36, minutePinion: 10, hourWheel: 40 }).toFraction() // '12'
 */
export const motionWorkRatio = (work: MotionWork): Fraction =>
  gearRatio([work.minuteWheel, work.hourWheel], [work.cannonPinion, work.minutePinion])
