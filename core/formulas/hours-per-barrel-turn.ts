import type Fraction from 'fraction.js'
import { gearRatio } from './gear-ratio.ts'

interface BarrelToCentre {
  readonly barrelTeeth: number
  readonly centrePinion: number
  /** The pair that a long-going train has between barrel and centre. */
  readonly intermediate?: { readonly pinion: number; readonly wheel: number }
  /** Hours in which the centre arbor turns once, where that is not one hour. */
  readonly hoursPerCentreTurn?: Fraction
}

/**
 * Hours in which the barrel turns once, exactly.
 *
 * h = (barrel teeth / centre pinion) × H, or (barrel / intermediate pinion) × (intermediate wheel / centre pinion) × H.
 * Units: counts of teeth and leaves; H = hours per turn of the centre arbor; result in hours.
 * @validity Going barrels, and great wheels of fusee and weight clocks entered as the barrel.
 * @source W. L. Goodrich, The Modern Clock, 1905, pp. 259–260; W. Derham, The Artificial Clock-maker, 1696, pp. 114–121.
 * @example
 * hoursPerBarrelTurn({ barrelTeeth: 80, centrePinion: 10 }).toFraction() // '8'
 */
export const hoursPerBarrelTurn = (train: BarrelToCentre): Fraction => {
  const { barrelTeeth, centrePinion, intermediate, hoursPerCentreTurn } = train
  const hours =
    intermediate === undefined
      ? gearRatio([barrelTeeth], [centrePinion])
      : gearRatio([barrelTeeth, intermediate.wheel], [intermediate.pinion, centrePinion])
  return hoursPerCentreTurn === undefined ? hours : hours.mul(hoursPerCentreTurn)
}
