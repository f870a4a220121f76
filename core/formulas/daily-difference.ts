/**
 * Seconds a day by which one rate runs ahead of another.
 *
 * d = 86 400 × (found − stated) / stated.
 * Units: both rates in vibrations per hour; result in seconds per day, positive where the first is the faster.
 * @validity Rates above zero. A train found faster than its stated rate loses by this much when the balance keeps the stated rate.
 * @source common practice; the size is that of 10 vibrations in 18 000, 48 s a day.
 * @example
 * dailyDifference(18010, 18000) // 48
 */
export const dailyDifference = (foundVph: number, statedVph: number): number =>
  (86400 * (foundVph - statedVph)) / statedVph
