import { plain } from '../quantities/plain.ts'
/** Several readings of one size, taken together. */
export interface MeanReading {
  readonly mean: number
  /** Largest less smallest. */
  readonly spread: number
  /** How far the mean may be off: the instrument, or half the spread where that is more. */
  readonly uncertaintyMm: number
}

/**
 * The mean of several readings of one size with their spread; null where there is none.
 * @example
 * meanOfReadings([0.12, 0.122, 0.118], 0.001) // { mean: 0.12, spread: 0.004, uncertaintyMm: 0.002 }
 */
export const meanOfReadings = (readings: readonly number[], instrumentMm: number): MeanReading | null => {
  if (readings.length === 0) return null
  const mean = plain(readings.reduce((sum, reading) => sum + reading, 0) / readings.length)
  const spread = plain(Math.max(...readings) - Math.min(...readings))
  return { mean, spread, uncertaintyMm: Math.max(instrumentMm, plain(spread / 2)) }
}
