import type { CaliberEntry, EntryReading } from '../../core/exchange/library-file.ts'
import type { CaliberFieldKey } from '../../core/fields/caliber-fields.ts'
import { type ListKey, listFields } from '../../core/fields/list-fields.ts'
import type { Caliber } from '../../core/record/caliber.ts'
import { entryKeys } from '../../core/record/entry.ts'
import type { Reading } from '../../core/record/reading.ts'
import { compact, folded, nameKey, orderKey } from './search-keys.ts'
import type { CaliberTable, ReadingTable, Tables } from './tables.ts'

/** An entry with what was read from it and how many of its proofs fail. */
export interface ReadCaliber {
  readonly entry: CaliberEntry
  readonly values: Caliber
  readonly disagree: number
  readonly doubtful: number
}

/** The key under which a maker and a designation may stand only once. */
export const nameOf = (maker: string, designation: string) => ({
  maker_folded: folded(maker) || nameKey(maker),
  designation_folded: nameKey(designation),
})

/** The caliber's own row. Its summary repeats chosen readings, so that the list need not look them up. */
export const caliberRow = ({
  entry,
  values: { values, readings },
  disagree,
  doubtful,
}: ReadCaliber): Omit<CaliberTable, 'id' | 'created_at' | 'changed_at'> => {
  const printed = (key: 'diameterMm' | 'lengthMm' | 'widthMm') =>
    readings[key]?.find(({ chosen }) => chosen)?.printed ?? null
  const [length, width] = [printed('lengthMm'), printed('widthMm')]
  return {
    maker: entry.maker,
    designation: entry.designation,
    ...nameOf(entry.maker, entry.designation),
    designation_compact: compact(entry.designation),
    designation_order: orderKey(entry.designation),
    size_printed: printed('diameterMm') ?? (length !== null && width !== null ? `${length} × ${width}` : null),
    diameter_mm: values.diameterMm ?? null,
    beat_rate_vph: values.beatRateVph ?? null,
    first_year: values.firstYear ?? null,
    last_year: values.lastYear ?? null,
    disagree,
    doubtful,
    extra: JSON.stringify(Object.fromEntries(Object.entries(entry).filter(([key]) => !entryKeys.has(key)))),
  }
}

/** One row a reading, in the order of the entry. A reading that could not be read keeps its print and no value. */
export const readingRows = ({ entry, values }: ReadCaliber): Omit<ReadingTable, 'caliber_id'>[] => {
  const rows: Omit<ReadingTable, 'caliber_id'>[] = []
  for (const [field, typed] of Object.entries(entry.fields)) {
    // A field of a newer version may be called as a part of every object is: constructor.
    const read: Reading[] = Object.hasOwn(values.readings, field)
      ? [...(values.readings[field as CaliberFieldKey] ?? [])]
      : []
    for (const reading of typed) {
      const { printed, source, page, note, ...extra } = reading
      const at = read.findIndex((candidate) => samePrint(candidate, reading))
      const found = at < 0 ? undefined : read.splice(at, 1)[0]
      rows.push({
        position: rows.length,
        field,
        printed,
        ...valueColumns(found),
        source: source ?? null,
        page: page ?? null,
        note: note ?? null,
        chosen: found?.chosen ? 1 : 0,
        extra: Object.keys(extra).length === 0 ? null : JSON.stringify(extra),
      })
    }
  }
  return rows
}

const samePrint = (read: Reading, typed: EntryReading): boolean =>
  read.printed.trim() === typed.printed.trim() && read.source === typed.source && read.page === typed.page

const valueColumns = (reading: Reading | undefined) => {
  const value = reading?.value
  return {
    number: typeof value === 'number' ? value : null,
    word: typeof value === 'string' ? value : Array.isArray(value) ? value.join(', ') : null,
    low: reading?.quantity?.low ?? null,
    high: reading?.quantity?.high ?? null,
  }
}

/** One row an overrule, in the order of the entry. */
export const overruleRows = ({ overrules = [] }: CaliberEntry): Omit<Tables['overrule'], 'caliber_id'>[] =>
  overrules.map(({ proof, severity, reason, of, ...extra }, position) => ({
    position,
    proof,
    severity,
    reason,
    outcome: of,
    extra: JSON.stringify(extra),
  }))

/** The table of each list, and its columns beside the line itself, by the list's own column names. */
export const listTables = {
  jewels: { table: 'jewel', columns: { place: 'place', kind: 'kind', count: 'count' } },
  lubrication: {
    table: 'lubrication',
    columns: { place: 'place', lubricant: 'lubricant', amount: 'amount', note: 'note' },
  },
  depths: {
    table: 'depth',
    columns: {
      driver: 'driver',
      driven: 'driven',
      driverPitchMm: 'driver_pitch_mm',
      drivenPitchMm: 'driven_pitch_mm',
      centreDistanceMm: 'centre_distance_mm',
    },
  },
  parts: { table: 'part', columns: { part: 'part', number: 'number', note: 'note' } },
  stripOrder: { table: 'strip_step', columns: { part: 'part', after: 'after', caution: 'caution' } },
} as const satisfies Record<ListKey, { table: string; columns: Record<string, string> }>

export const listKeys = Object.keys(listTables) as ListKey[]

/** The rows of one list: the line whole, and beside it the columns that were read. */
export const listRows = ({ entry, values }: ReadCaliber, key: ListKey): Record<string, number | string | null>[] => {
  const read: readonly object[] = values.lists[key]
  const numbers: Readonly<Record<string, { readonly kind: string }>> = listFields[key].columns
  return entry[key].map((line, position) => {
    // Lines that could not be read are absent from the read list, and then no line can be paired with its own.
    const known: Readonly<Record<string, unknown>> = read.length === entry[key].length ? { ...read[position] } : {}
    const cells = Object.entries(listTables[key].columns).map(([name, column]) => {
      const isNumber = ['count', 'length'].includes(numbers[name]?.kind ?? '')
      return [column, cell(known[name] ?? (isNumber ? null : line[name]), isNumber)] as const
    })
    const source = typeof line.source === 'string' ? line.source : null
    return { position, source, line: JSON.stringify(line), ...Object.fromEntries(cells) }
  })
}

const cell = (value: unknown, isNumber: boolean): number | string | null => {
  if (value === null || value === undefined) return null
  if (isNumber) return typeof value === 'number' ? value : null
  return Array.isArray(value) ? value.join(', ') : String(value)
}
