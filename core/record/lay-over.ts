import type { CaliberEntry, EntryReading } from '../exchange/library-file.ts'

/** True where a reading is the earlier word of the same source, or the same print without one. */
const isReplaced = (before: EntryReading, reading: EntryReading): boolean =>
  reading.source === undefined || before.source === undefined
    ? before.printed === reading.printed
    : before.source === reading.source

const layReading = (before: readonly EntryReading[], reading: EntryReading): EntryReading[] => {
  const same = before.find((other) => isReplaced(other, reading) && other.printed === reading.printed)
  const others = before.filter((other) => !isReplaced(other, reading))
  return [
    { ...same, ...reading, chosen: true },
    ...others.map(({ chosen: _, ...other }): EntryReading => ({ ...other, printed: other.printed })),
  ]
}

/**
 * Lays what a table says of a caliber over what is known of it: each value of the table is chosen, what other sources
 * say stays beside it, and what the table does not say is left alone. The names stay as they are.
 */
export const layOver = (stored: CaliberEntry, said: CaliberEntry): CaliberEntry => {
  const fields = { ...stored.fields }
  for (const [key, readings] of Object.entries(said.fields)) {
    const reading = readings.find(({ chosen }) => chosen === true) ?? readings[0]
    if (reading !== undefined) fields[key] = layReading(Object.hasOwn(fields, key) ? (fields[key] ?? []) : [], reading)
  }
  return { ...stored, fields }
}
