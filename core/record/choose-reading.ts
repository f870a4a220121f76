import type { CaliberFieldKey } from '../fields/caliber-fields.ts'
import type { Caliber } from './caliber.ts'
import type { Reading } from './reading.ts'

/** The caliber with this reading of a field chosen in place of the one that is. */
export const chooseReading = (caliber: Caliber, key: CaliberFieldKey, reading: Reading): Caliber => {
  const others: readonly Reading[] = caliber.readings[key] ?? []
  const readings = others
    .filter((other) => other !== reading)
    .map((other) => (other.chosen ? { ...other, chosen: false } : other))
  // The reading belongs to the field, so its value has the field's type.
  return {
    ...caliber,
    values: { ...caliber.values, [key]: reading.value },
    readings: { ...caliber.readings, [key]: [{ ...reading, chosen: true }, ...readings] },
  } as Caliber
}
