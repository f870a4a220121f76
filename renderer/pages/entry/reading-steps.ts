import type { CaliberEntry, EntryReading } from '../../../core/exchange/library-file.ts'
import type { CaliberFieldKey } from '../../../core/fields/caliber-fields.ts'
import { chosenIndex } from './chosen-reading.ts'
import type { SourceInHand } from './entry-state.ts'

/** The reading from the source in hand, in place of what it came from; from none where none is in hand. */
export const withSource = (reading: EntryReading, { source, page }: SourceInHand): EntryReading => {
  const { source: _source, page: _page, ...rest } = reading
  return source === '' ? rest : { ...rest, source, ...(page === '' ? {} : { page }) }
}

export const withReadings = (
  entry: CaliberEntry,
  key: CaliberFieldKey,
  readings: readonly EntryReading[],
): CaliberEntry => ({
  ...entry,
  fields: { ...entry.fields, [key]: [...readings] },
})

/** A reading to be typed beside those stated, chosen. */
export const addReading = (entry: CaliberEntry, key: CaliberFieldKey, inHand: SourceInHand): CaliberEntry => {
  const stated = (entry.fields[key] ?? []).filter((reading) => reading.printed !== '')
  const others = stated.map((reading) => ({ ...reading, chosen: false }))
  return withReadings(entry, key, [...others, { ...withSource({ printed: '' }, inHand), chosen: true }])
}

export const chooseReading = (entry: CaliberEntry, key: CaliberFieldKey, index: number): CaliberEntry =>
  withReadings(
    entry,
    key,
    (entry.fields[key] ?? []).map((reading, at) => ({ ...reading, chosen: at === index })),
  )

/** The reading with the reason for it; without one where nothing is left of it. */
export const noteReading = (entry: CaliberEntry, key: CaliberFieldKey, index: number, note: string): CaliberEntry =>
  withReadings(
    entry,
    key,
    (entry.fields[key] ?? []).map((reading, at) => {
      if (at !== index) return reading
      const { note: _note, ...rest } = reading
      return note === '' ? rest : { ...rest, note }
    }),
  )

/** One reading less; where it was the chosen one, the one before it is chosen, or else the first. */
export const removeReading = (entry: CaliberEntry, key: CaliberFieldKey, index: number): CaliberEntry => {
  const readings = entry.fields[key] ?? []
  const chosen = chosenIndex(readings)
  const left = withReadings(entry, key, readings.toSpliced(index, 1))
  const next = index > chosen ? chosen : Math.max(0, chosen - 1)
  return readings.length > 1 ? chooseReading(left, key, next) : left
}

export const giveSource = (entry: CaliberEntry, keys: readonly CaliberFieldKey[], inHand: SourceInHand): CaliberEntry =>
  keys.reduce((given, key) => {
    const readings = given.fields[key] ?? []
    const at = chosenIndex(readings)
    const reading = readings[at]
    return reading === undefined ? given : withReadings(given, key, readings.with(at, withSource(reading, inHand)))
  }, entry)
