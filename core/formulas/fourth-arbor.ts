import Fraction from 'fraction.js'
import { plain } from '../quantities/plain.ts'
import type { CaliberValues } from '../record/caliber.ts'
import { beatRate } from './beat-rate.ts'
import { stageCounts, stagesFromCentre } from './train-stages.ts'

/**
 * Share of the stated rate within which a rate counts as the stated one, rounded or nominal.
 * One tooth more or less on a wheel of up to 150 teeth shifts the rate by 0.67 % or more.
 */
export const nominalRateShare = 0.003

/**
 * Whether a train has a fourth arbor; null where that cannot be told.
 *
 * A train that states neither of the fourth arbor's counts has none only if it gives the stated rate without them:
 * a pair left out would shift the rate six- to fifteen-fold.
 * @validity Watches have a fourth arbor; many clocks with a seconds pendulum have not.
 * @source W. Derham, The Artificial Clock-maker, 1696, p. 110; Encyclopaedia Britannica, 11th ed., “Clock”, p. 537.
 * @example
 * hasFourthArbor({ beatRateVph: 3600, centreWheel: 64, thirdPinion: 8, thirdWheel: 60, escapePinion: 8, escapeTeeth: 30 }) // false
 */
export const hasFourthArbor = (values: CaliberValues): boolean | null => {
  if (values.fourthPinion !== undefined || values.fourthWheel !== undefined) return true
  const { beatRateVph: stated, escapeTeeth } = values
  const counts = stageCounts(values, stagesFromCentre(values, false))
  if (stated === undefined || escapeTeeth === undefined || counts === null) return null
  const hours = values.hoursPerCentreTurn === undefined ? undefined : new Fraction(values.hoursPerCentreTurn)
  const found = beatRate(counts.wheels, counts.pinions, escapeTeeth, hours).valueOf()
  return plain(Math.abs(found - stated)) <= plain(stated * nominalRateShare) ? false : null
}
