import type { CaliberEntry, EntryReading } from '../exchange/library-file.ts'
import type { CaliberFieldKey } from '../fields/caliber-fields.ts'
import { type ListKey, listFields } from '../fields/list-fields.ts'
import type { Caliber, CaliberLists, ListLine } from './caliber.ts'
import { entryKeys, isCaliberField } from './entry.ts'
import { readField } from './read-field.ts'
import { type CellProblem, isBlankLine, readListLine } from './read-list-line.ts'
import type { FieldValue, Reading, UnusualRemark } from './reading.ts'

/** A value of an entry that could not be read; for a list, `index` is the line and `column` the cell. */
export interface EntryProblem {
  readonly field: string
  readonly index: number
  readonly column?: string
  readonly printed: string
  readonly problem: CellProblem['problem']
}

export interface EntryRemark {
  readonly field: CaliberFieldKey
  readonly index: number
  readonly remark: UnusualRemark
}

export interface EntryRead {
  readonly caliber: Caliber
  readonly problems: readonly EntryProblem[]
  /** Values accepted though unusual. */
  readonly remarks: readonly EntryRemark[]
  /** Keys from a newer version, kept in the entry and not read. */
  readonly unknownKeys: readonly string[]
}

/** A reading in which nothing was typed: a form keeps one ready. */
const isBlank = ({ printed, source, page, note }: EntryReading): boolean =>
  printed.trim() === '' && !source && !page && !note

const chosenIndex = (readings: readonly EntryReading[]): number => {
  const marked = readings.findIndex((reading) => reading.chosen === true)
  return marked >= 0 ? marked : readings.findIndex((reading) => !isBlank(reading))
}

/** Reads an entry into values, with a problem for each value that cannot be read. Never throws. */
export const readEntry = (entry: CaliberEntry): EntryRead => {
  const problems: EntryProblem[] = []
  const remarks: EntryRemark[] = []
  const unknownKeys = Object.keys(entry).filter((key) => !entryKeys.has(key))
  const values: Partial<Record<CaliberFieldKey, FieldValue>> = {}
  const readings: Partial<Record<CaliberFieldKey, readonly Reading[]>> = {}

  for (const [key, printedReadings] of Object.entries(entry.fields)) {
    // Maker and designation stand at the top of an entry; a second one among the fields is kept, not read.
    if (!isCaliberField(key) || key === 'maker' || key === 'designation') {
      unknownKeys.push(key)
      continue
    }
    const chosen = chosenIndex(printedReadings)
    const read: Reading[] = []
    printedReadings.forEach((reading, index) => {
      if (isBlank(reading)) return
      const { printed, source, page, note } = reading
      const result = readField(key, printed)
      if (!result.ok) {
        problems.push({ field: key, index, printed, problem: result.problem })
        return
      }
      const { value, quantity, remark } = result
      if (remark) remarks.push({ field: key, index, remark })
      if (index === chosen) values[key] = value
      read.push({
        printed,
        value,
        ...(quantity && { quantity }),
        ...(source !== undefined && { source }),
        ...(page !== undefined && { page }),
        ...(note !== undefined && { note }),
        chosen: index === chosen,
      })
    })
    if (read.length > 0) readings[key] = read
  }
  for (const key of ['maker', 'designation'] as const) {
    const result = readField(key, entry[key])
    if (result.ok) values[key] = result.value
    else problems.push({ field: key, index: 0, printed: entry[key], problem: result.problem })
  }

  const readLines = <K extends ListKey>(list: K): readonly ListLine<K>[] => {
    const lines: ListLine<K>[] = []
    entry[list].forEach((line, index) => {
      if (isBlankLine(line)) return
      const result = readListLine(list, line)
      if (result.ok) lines.push(result.line)
      else for (const problem of result.problems) problems.push({ field: list, index, ...problem })
    })
    return lines
  }
  const lists: CaliberLists = {
    jewels: readLines('jewels'),
    lubrication: readLines('lubrication'),
    depths: readLines('depths'),
    parts: readLines('parts'),
    stripOrder: readLines('stripOrder'),
  }
  const { overrules } = entry
  // Each value was read by its own row of the table, from which its type is inferred.
  const caliber = { values, readings, lists, ...(overrules && { overrules }) } as Caliber
  return { caliber, problems, remarks, unknownKeys }
}

/** True where a problem's `field` names a list and not a field. */
export const isListKey = (key: string): key is ListKey => Object.hasOwn(listFields, key)
