import type Fraction from 'fraction.js'
import { hoursPerBarrelTurn } from '../formulas/hours-per-barrel-turn.ts'
import type { CaliberValues } from '../record/caliber.ts'

/**
 * Hours in which the barrel of a caliber turns once; null where a count between barrel and centre is not stated.
 * @example
 * barrelTurnHours({ barrelTeeth: 58, centrePinion: 8 }) // 7.25
 */
export const barrelTurnHours = (values: CaliberValues, exactHoursPerCentreTurn?: Fraction): number | null => {
  const { barrelTeeth, centrePinion, intermediatePinion: pinion, intermediateWheel: wheel } = values
  if (barrelTeeth === undefined || centrePinion === undefined) return null
  if ((pinion === undefined) !== (wheel === undefined)) return null
  const hours = hoursPerBarrelTurn({
    barrelTeeth,
    centrePinion,
    ...(pinion === undefined || wheel === undefined ? {} : { intermediate: { pinion, wheel } }),
    ...(exactHoursPerCentreTurn === undefined ? {} : { hoursPerCentreTurn: exactHoursPerCentreTurn }),
  })
  return exactHoursPerCentreTurn === undefined ? hours.valueOf() * (values.hoursPerCentreTurn ?? 1) : hours.valueOf()
}
