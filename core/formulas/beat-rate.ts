import type Fraction from 'fraction.js'
import { gearRatio } from './gear-ratio.ts'

/**
 * Vibrations per hour that a train gives, exactly.
 *
 * n = 2 × E × (W1/p1) × (W2/p2) × … / H: each escape tooth passes in two vibrations.
 * Units: counts of teeth and leaves; H = hours per turn of the first driver; n in vibrations (half oscillations) per hour.
 * @validity Any number of pairs from the first driver (the centre wheel) to the escape pinion. Detent and duplex
 * escapements too: they give impulse at every second vibration, but a tooth still passes in two.
 * @source W. Derham, The Artificial Clock-maker, 1696, pp. 10–13; Encyclopaedia Britannica, 4th ed., 1810, “Science, Amusements of”.
 * @example
 * beatRate([80, 75, 80], [10, 10, 8], 15).toFraction() // '18000'
 */
export const beatRate = (
  wheels: readonly number[],
  pinions: readonly number[],
  escapeTeeth: number,
  hoursPerFirstTurn?: Fraction,
): Fraction => {
  const rate = gearRatio([...wheels, 2, escapeTeeth], pinions)
  return hoursPerFirstTurn === undefined ? rate : rate.div(hoursPerFirstTurn)
}
