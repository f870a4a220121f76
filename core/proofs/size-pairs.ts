import type { PrintedUnit } from '../quantities/quantity.ts'
import type { Caliber, CaliberValues } from '../record/caliber.ts'
import type { Reading } from '../record/reading.ts'

/** The fields that say how large a movement is where it sits in the case. */
export const sizeKeys = ['diameterMm', 'lengthMm', 'widthMm'] as const satisfies readonly (keyof CaliberValues)[]
export type SizeKey = (typeof sizeKeys)[number]

/** Two printed sizes that must be the same length. */
export interface SizePair {
  readonly key: SizeKey
  readonly otherKey: SizeKey
  readonly first: Reading<number>
  readonly second: Reading<number>
}

const systems: Readonly<Partial<Record<PrintedUnit, 'metric' | 'french' | 'english'>>> = {
  ligne: 'french',
  douzieme: 'french',
  inch: 'english',
}
const systemOf = ({ quantity }: Reading): string => (quantity && systems[quantity.unit]) ?? 'metric'

/** Every two readings of one size that are printed in different measures: lignes, millimetres or inches. */
export const pairsOfUnits = (readings: Caliber['readings']): readonly SizePair[] => {
  const pairs: SizePair[] = []
  for (const key of sizeKeys) {
    const sorted = [...(readings[key] ?? [])].sort((a, b) => Number(b.chosen) - Number(a.chosen))
    sorted.forEach((first, at) => {
      for (const second of sorted.slice(at + 1))
        if (systemOf(first) !== systemOf(second)) pairs.push({ key, otherKey: key, first, second })
    })
  }
  return pairs
}

/** The chosen reading of a size; one that was stated without a print is taken as it stands. */
export const sizeReading = (
  { values, readings }: Pick<Caliber, 'readings'> & { values: CaliberValues },
  key: SizeKey,
) => {
  const value = values[key]
  if (value === undefined) return undefined
  const chosen = readings[key]?.find((reading) => reading.chosen)
  return chosen ?? ({ printed: String(value), value, chosen: true } satisfies Reading<number>)
}
