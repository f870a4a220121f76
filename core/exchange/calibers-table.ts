import { type CaliberFieldKey, caliberFields } from '../fields/caliber-fields.ts'
import { blankEntry, isCaliberField } from '../record/entry.ts'
import { fieldFromHeading, headingOf } from '../record/headings.ts'
import type { CaliberEntry } from './library-file.ts'

/** What keeps a table, or a row of it, from being read. Rows are counted from 1, the headings being row 1. */
export type TableProblem =
  | { readonly code: 'no-rows' }
  | { readonly code: 'no-column'; readonly field: 'maker' | 'designation' }
  | { readonly code: 'same-column'; readonly column: number; readonly heading: string }
  | { readonly code: 'no-name'; readonly row: number; readonly field: 'maker' | 'designation' }
  | { readonly code: 'too-many-cells'; readonly row: number }

export interface CalibersTable {
  readonly entries: readonly { readonly row: number; readonly entry: CaliberEntry }[]
  readonly problems: readonly TableProblem[]
  /** Headings that name no field; their cells are kept in the entries under the heading. */
  readonly unknownHeadings: readonly string[]
}

const isBlankRow = (row: readonly string[]): boolean => row.every((cell) => cell.trim() === '')

/**
 * Reads calibers from the rows of a table, the first row its headings in any of the four languages or by key.
 * Cells are kept as printed: `core/record/read-entry.ts` reads them.
 */
export const entriesFromRows = (rows: readonly (readonly string[])[]): CalibersTable => {
  const [headings] = rows
  if (!headings) return { entries: [], problems: [{ code: 'no-rows' }], unknownHeadings: [] }
  const problems: TableProblem[] = []
  const unknownHeadings: string[] = []
  const columns: (string | undefined)[] = headings.map((heading, index) => {
    const name = heading.replace(/^\ufeff/, '').trim()
    if (name === '') return undefined
    const field = fieldFromHeading(name)
    if (!field) unknownHeadings.push(name)
    const key = field ?? name
    const first = headings.findIndex((other) => (fieldFromHeading(other.trim()) ?? other.trim()) === key)
    if (first !== index && first >= 0) problems.push({ code: 'same-column', column: index + 1, heading: name })
    return key
  })
  for (const field of ['maker', 'designation'] as const)
    if (!columns.includes(field)) problems.push({ code: 'no-column', field })
  if (problems.length > 0) return { entries: [], problems, unknownHeadings }

  const entries: { row: number; entry: CaliberEntry }[] = []
  rows.slice(1).forEach((cells, index) => {
    if (isBlankRow(cells)) return
    const row = index + 2
    if (cells.slice(columns.length).some((cell) => cell.trim() !== '')) {
      problems.push({ code: 'too-many-cells', row })
      return
    }
    const fields: [string, CaliberEntry['fields'][string]][] = []
    const names = { maker: '', designation: '' }
    columns.forEach((key, column) => {
      const printed = (cells[column] ?? '').trim()
      if (key === undefined || printed === '') return
      if (key === 'maker' || key === 'designation') names[key] = printed
      else fields.push([key, [{ printed, chosen: true }]])
    })
    const missing = (['maker', 'designation'] as const).find((field) => names[field] === '')
    if (missing) problems.push({ code: 'no-name', row, field: missing })
    else entries.push({ row, entry: { ...blankEntry(), ...names, fields: Object.fromEntries(fields) } })
  })
  return { entries, problems, unknownHeadings }
}

/**
 * Writes calibers as rows, headings first: the chosen reading of each field as printed. Sources, further readings
 * and lists have no place in a table; the library file carries them.
 */
export const rowsFromEntries = (entries: readonly CaliberEntry[]): string[][] => {
  const used = new Set(entries.flatMap((entry) => Object.keys(entry.fields)))
  const known = (Object.keys(caliberFields) as CaliberFieldKey[]).filter(
    (key) => key !== 'maker' && key !== 'designation' && used.has(key),
  )
  const unknown = [...used].filter((key) => !isCaliberField(key))
  const keys = [...known, ...unknown]
  const printed = (entry: CaliberEntry, key: string): string => {
    const readings = entry.fields[key] ?? []
    return (readings.find((reading) => reading.chosen === true) ?? readings[0])?.printed ?? ''
  }
  return [
    [headingOf('maker'), headingOf('designation'), ...known.map(headingOf), ...unknown],
    ...entries.map((entry) => [entry.maker, entry.designation, ...keys.map((key) => printed(entry, key))]),
  ]
}
