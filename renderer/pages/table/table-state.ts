import { isBlankTableRow } from '../../../core/exchange/pasted-table.ts'
import { columnFromHeading, isHeadingRow, type TableColumn, usualColumns } from '../../../core/exchange/table-column.ts'
import type { CaliberFieldKey } from '../../../core/fields/caliber-fields.ts'

export type Row = readonly string[]
/** A cell by its place; the row after the last one is there to be typed in. */
export interface Place {
  readonly row: number
  readonly column: number
}
interface Sheet {
  readonly columns: readonly TableColumn[]
  readonly rows: readonly Row[]
}
export interface TableState extends Sheet {
  readonly source: string
  readonly page: string
  readonly maker: string
  readonly pasted: boolean
  readonly at: Place
  readonly past: readonly Sheet[]
  readonly future: readonly Sheet[]
}

export type TableAction =
  | { readonly type: 'origin'; readonly change: Partial<Pick<TableState, 'source' | 'page' | 'maker'>> }
  | { readonly type: 'arrange'; readonly fields: readonly CaliberFieldKey[] }
  | { readonly type: 'go'; readonly to: Place }
  | { readonly type: 'write'; readonly place: Place; readonly text: string; readonly to?: Place }
  | { readonly type: 'paste'; readonly table: readonly Row[] }
  | { readonly type: 'column'; readonly column: number; readonly change: Partial<TableColumn> }
  | { readonly type: 'move-column'; readonly column: number; readonly by: -1 | 1 }
  | { readonly type: 'add-column' }
  | { readonly type: 'remove-row'; readonly row: number }
  | { readonly type: 'undo' }
  | { readonly type: 'redo' }
  | { readonly type: 'start-over' }
  | { readonly type: 'stored' }

/** The most rows that a table takes; `calibers.save-many` takes no more at once. */
export const mostRows = 10_000
const stepsKept = 100

export const columnsOf = (fields: readonly CaliberFieldKey[]): TableColumn[] =>
  fields.map((field) => ({ heading: '', field, unit: null }))

export const newTable: TableState = {
  source: '',
  page: '',
  maker: '',
  pasted: false,
  columns: columnsOf(usualColumns),
  rows: [],
  at: { row: 0, column: 0 },
  past: [],
  future: [],
}

const within = (place: Place, { columns, rows }: Sheet): Place => ({
  row: Math.max(0, Math.min(place.row, rows.length)),
  column: Math.max(0, Math.min(place.column, columns.length - 1)),
})

/** A step that can be taken back. */
const step = (state: TableState, sheet: Partial<Sheet>, to = state.at): TableState => {
  const { columns, rows } = state
  const next = { ...state, ...sheet, past: [...state.past.slice(1 - stepsKept), { columns, rows }], future: [] }
  return { ...next, at: within(to, next) }
}

const blank: TableColumn = { heading: '', field: null, unit: null }

const written = (rows: readonly Row[], { row, column }: Place, text: string): Row[] => {
  const next = [...rows]
  while (next.length <= row) next.push([])
  const cells = [...(next[row] ?? [])]
  while (cells.length < column) cells.push('')
  cells[column] = text
  next[row] = cells
  return next
}

const widest = (rows: readonly Row[]): number => rows.reduce((most, row) => Math.max(most, row.length), 0)

const padded = (columns: readonly TableColumn[], width: number): TableColumn[] => [
  ...columns,
  ...Array.from({ length: Math.max(0, width - columns.length) }, () => blank),
]

/** Rows with headings: a table that is still blank takes their columns, another takes them in below, each under its own. */
const pasteUnderHeadings = (state: TableState, headings: Row, body: readonly Row[]): TableState => {
  const width = Math.max(headings.length, widest(body))
  const printed = padded(headings.map(columnFromHeading), width)
  if (state.rows.every(isBlankTableRow)) {
    return step({ ...state, pasted: true }, { columns: printed, rows: body }, { row: 0, column: 0 })
  }
  const columns = [...state.columns]
  const taken = new Set<number>()
  const places = printed.map((column) => {
    const found = columns.findIndex(
      (one, index) =>
        !taken.has(index) &&
        one.field === column.field &&
        one.unit === column.unit &&
        (column.field !== null || one.heading === column.heading),
    )
    const place = found >= 0 ? found : columns.push(column) - 1
    taken.add(place)
    return place
  })
  const rows = body.map((cells) => {
    const row = columns.map(() => '')
    for (const [index, place] of places.entries()) row[place] = cells[index] ?? ''
    return row
  })
  return step({ ...state, pasted: true }, { columns, rows: [...state.rows, ...rows].slice(0, mostRows) })
}

const paste = (state: TableState, table: readonly Row[]): TableState => {
  const [first, ...rest] = table.slice(0, mostRows + 1)
  if (first === undefined) return state
  if (isHeadingRow(first)) return pasteUnderHeadings(state, first, rest)
  const { row, column } = state.at
  const rows = [...state.rows]
  while (rows.length < row) rows.push([])
  for (const [index, cells] of table.slice(0, mostRows - row).entries()) {
    const before = [...(rows[row + index] ?? [])]
    while (before.length < column) before.push('')
    rows[row + index] = [...before.slice(0, column), ...cells, ...before.slice(column + cells.length)]
  }
  return step({ ...state, pasted: true }, { columns: padded(state.columns, widest(rows)), rows })
}

const back = (state: TableState, from: 'past' | 'future', to: 'past' | 'future'): TableState => {
  const sheet = state[from].at(-1)
  if (sheet === undefined) return state
  const { columns, rows } = state
  const next = { ...state, ...sheet, [from]: state[from].slice(0, -1), [to]: [...state[to], { columns, rows }] }
  return { ...next, at: within(state.at, next) }
}

/** What happens to a table that is being entered; nothing of it reaches the library. */
export const tableReducer = (state: TableState, action: TableAction): TableState => {
  switch (action.type) {
    case 'origin':
      return { ...state, ...action.change }
    case 'arrange':
      return { ...state, columns: columnsOf(action.fields), at: { row: 0, column: 0 } }
    case 'go':
      return { ...state, at: within(action.to, state) }
    case 'write': {
      const { place, text, to } = action
      const same = (state.rows[place.row]?.[place.column] ?? '') === text.trim()
      if (same || place.row >= mostRows) return { ...state, at: within(to ?? place, state) }
      return step(state, { rows: written(state.rows, place, text.trim()) }, to ?? place)
    }
    case 'paste':
      return paste(state, action.table)
    case 'column':
      return step(state, {
        columns: state.columns.map((column, index) =>
          index === action.column ? { ...column, ...action.change } : column,
        ),
      })
    case 'move-column': {
      const to = action.column + action.by
      if (to < 0 || to >= state.columns.length) return state
      const swap = <T>(all: readonly T[], none: T): T[] =>
        state.columns.map(
          (_, index) => all[index === to ? action.column : index === action.column ? to : index] ?? none,
        )
      return step(
        state,
        { columns: swap(state.columns, blank), rows: state.rows.map((row) => swap(row, '')) },
        { row: state.at.row, column: to },
      )
    }
    case 'add-column':
      return step(state, { columns: [...state.columns, blank] })
    case 'remove-row':
      return step(state, { rows: state.rows.filter((_, index) => index !== action.row) })
    case 'undo':
      return back(state, 'past', 'future')
    case 'redo':
      return back(state, 'future', 'past')
    case 'start-over':
      return step({ ...state, pasted: false }, { rows: [] }, { row: 0, column: 0 })
    case 'stored':
      return { ...state, pasted: false, rows: [], at: { row: 0, column: 0 }, past: [], future: [] }
  }
}
