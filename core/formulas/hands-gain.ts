import { positive } from './positive.ts'

const secondsPerDay = 86_400

/**
 * Seconds a day by which the hands gain where the balance beats at one rate and the train is cut for another.
 *
 * d = 86 400 × (n of the balance / n of the train − 1).
 * Units: both rates in vibrations per hour; seconds of the hands in a day of true time, a gain being positive.
 * @validity Any train whose beat rate is that at which its minute hand keeps time.
 * @source Derived here: the minute hand turns n of the balance / n of the train times in an hour.
 * @throws OutsideRange where a rate is not above zero.
 * @example
 * handsGain(18000, 18240) // -1136.842
 */
export const handsGain = (balanceVph: number, trainVph: number): number =>
  secondsPerDay * (positive('beatRateVph', balanceVph) / positive('beatRateVph', trainVph) - 1)

/**
 * The beat rate for which the train must be cut where the balance beats at one rate and the hands gain.
 *
 * n of the train = n of the balance / (1 + d / 86 400).
 * Units: as for the gain of the hands.
 * @validity As for the gain of the hands; a loss of less than a whole day.
 * @source The same relation, solved for the train.
 * @throws OutsideRange where the rate is not above zero, or the hands would stand still.
 * @example
 * rateOfTrain(18000, -1136.8421) // 18240
 */
export const rateOfTrain = (balanceVph: number, handsGainSecondsPerDay: number): number => {
  const turns = 1 + handsGainSecondsPerDay / secondsPerDay
  return positive('beatRateVph', balanceVph) / positive('handsTurn', turns)
}
