import type { CaliberEntry, EntryReading } from '../../../core/exchange/library-file.ts'
import { type ListColumn, type ListKey, listFields } from '../../../core/fields/list-fields.ts'
import { readNames } from '../../../core/record/read-field.ts'

const isBlank = (value: unknown): boolean =>
  value === undefined ||
  value === null ||
  (typeof value === 'string' && value.trim() === '') ||
  (Array.isArray(value) && value.length === 0)

/** Where the chosen reading was emptied, the first that is left is chosen. */
const settleReadings = (readings: readonly EntryReading[]): EntryReading[] => {
  const stated = readings.filter((reading) => !isBlank(reading.printed))
  const [first, ...others] = stated
  if (first === undefined || others.length === 0 || stated.some((reading) => reading.chosen === true)) return stated
  return [{ ...first, chosen: true }, ...others]
}

/** A cell as the file has it: whole counts as numbers, names apart by commas as a list, what cannot be read as typed. */
const settleCell = (column: ListColumn | undefined, value: unknown): unknown => {
  if (typeof value !== 'string') return value
  const text = value.trim()
  if (column?.kind === 'count') return /^\d{1,6}$/.test(text) ? Number(text) : text
  if (column?.kind === 'texts') return [...readNames(text)]
  return text
}

const settleLines = (list: ListKey, lines: CaliberEntry[ListKey]): CaliberEntry[ListKey] => {
  const columns: Readonly<Record<string, ListColumn>> = listFields[list].columns
  return lines
    .map((line) =>
      Object.fromEntries(
        Object.entries(line)
          .filter(([, value]) => !isBlank(value))
          .map(([column, value]) => [column, settleCell(columns[column], value)]),
      ),
    )
    .filter((line) => Object.keys(line).length > 0)
}

/** The entry without what was left empty, as it is proved, kept and saved; while typing, emptied values keep their place. */
export const settledEntry = (entry: CaliberEntry): CaliberEntry => ({
  ...entry,
  maker: entry.maker.trim(),
  designation: entry.designation.trim(),
  fields: Object.fromEntries(
    Object.entries(entry.fields)
      .map(([key, readings]) => [key, settleReadings(readings)] as const)
      .filter(([, readings]) => readings.length > 0),
  ),
  jewels: settleLines('jewels', entry.jewels),
  lubrication: settleLines('lubrication', entry.lubrication),
  depths: settleLines('depths', entry.depths),
  parts: settleLines('parts', entry.parts),
  stripOrder: settleLines('stripOrder', entry.stripOrder),
})
