import type { EntryReading } from '../../../core/exchange/library-file.ts'

/** Where the reading stands that the form shows: the one chosen, or the first where none is. */
export const chosenIndex = (readings: readonly EntryReading[]): number => {
  const at = readings.findIndex((reading) => reading.chosen === true)
  return at === -1 ? 0 : at
}

export const chosenReading = (readings: readonly EntryReading[] | undefined): EntryReading | undefined =>
  readings?.[chosenIndex(readings)]
