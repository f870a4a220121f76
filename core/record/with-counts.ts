import type { CaliberEntry, EntryReading } from '../exchange/library-file.ts'
import type { CountKey } from '../trains/cuttable-counts.ts'

/**
 * An entry in which counts that were worked out stand as readings of their own and are chosen; what was printed stays.
 * A count that a reading already prints is chosen there.
 * @example
 * withCounts({ maker: '', designation: '', fields: {}, jewels: [], lubrication: [], depths: [], parts: [], stripOrder: [] }, { thirdWheel: 75 }, 'worked out').fields.thirdWheel // [{ printed: '75', note: 'worked out', chosen: true }]
 */
export const withCounts = (
  entry: CaliberEntry,
  counts: Readonly<Partial<Record<CountKey, number>>>,
  note: string,
): CaliberEntry => {
  const fields = { ...entry.fields }
  for (const [key, count] of Object.entries(counts)) {
    const readings = (fields[key] ?? []).filter(({ printed }) => printed.trim() !== '')
    const there = readings.findIndex(({ printed }) => printed.trim() === String(count))
    const others = readings.map(({ chosen: _, ...reading }, at) =>
      at === there ? { ...reading, chosen: true } : reading,
    ) as EntryReading[]
    fields[key] = there < 0 ? [...others, { printed: String(count), note, chosen: true }] : others
  }
  return { ...entry, fields }
}
