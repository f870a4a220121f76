import type { SpringOrder } from '../springs/spring-line.ts'
import { springLine, springOrders } from '../springs/spring-line.ts'
import type { StockSpring } from '../springs/stock-spring.ts'
import { writeColumnUnit } from './column-unit.ts'
import { readStockSpring, type StockSpringProblem } from './read-stock-spring.ts'
import type { SpringColumn } from './spring-column.ts'

/** How a list of springs is to be read, as its reader has settled it. */
export interface SpringTableReading {
  readonly headingRows: number
  readonly columns: readonly SpringColumn[]
  readonly decimalMark: '.' | ','
  /** The order of the figures in a cell that holds several. */
  readonly order: SpringOrder
  /** The list or tray to which the springs go. */
  readonly tray: string
}

/** A row that is not taken over, and why. Rows are counted from 1, as a spreadsheet does. */
export interface RefusedSpringRow {
  readonly row: number
  readonly printed: string
  readonly problem:
    | StockSpringProblem
    | {
        readonly key: 'supplierRef'
        readonly label: string
        readonly problem: { readonly code: 'said-twice'; readonly row: number }
      }
    | {
        readonly key: 'sizes'
        readonly label: string
        readonly problem: { readonly code: 'not-so-many'; readonly text: string; readonly wanted: number }
      }
}

export interface SpringTable {
  readonly springs: readonly { readonly row: number; readonly spring: StockSpring }[]
  readonly refused: readonly RefusedSpringRow[]
}

const sizeOfPart: Readonly<Record<string, readonly [string, 'mm' | 'tenths-mm' | 'hundredths-mm' | 'inch']>> = {
  height: ['heightMm', 'mm'],
  thickness: ['thicknessMm', 'mm'],
  length: ['lengthMm', 'mm'],
  barrel: ['barrelMm', 'mm'],
  'height-tenths': ['heightMm', 'tenths-mm'],
  'thickness-hundredths': ['thicknessMm', 'hundredths-mm'],
  'height-inch': ['heightMm', 'inch'],
  'thickness-inch': ['thicknessMm', 'inch'],
  'length-inch': ['lengthMm', 'inch'],
}

/** A figure as written with a point, where the list has decimals with a comma. */
const pointed = (text: string, mark: '.' | ','): string =>
  mark === ',' ? text.replace(/(\d)\.(?=\d{3}(\D|$))/g, '$1').replace(/,(?=\d)/, '.') : text

/** The figures of one cell: with a multiplication sign, a stroke, a semicolon or a space between them. */
const figuresOf = (cell: string): string[] => {
  const separator = /[x×*;]/i.test(cell) ? /\s*[x×*;]\s*/i : /\s*[/|]\s*|\s+/
  return cell
    .trim()
    .replace(/\s*mm\.?$/i, '')
    .split(separator)
    .filter((figure) => figure !== '')
}

type Line = Record<string, string>
type RowProblem = RefusedSpringRow['problem']

const isSize = (kind: SpringColumn['kind']): kind is 'heightMm' | 'thicknessMm' | 'lengthMm' | 'barrelMm' =>
  kind === 'heightMm' || kind === 'thicknessMm' || kind === 'lengthMm' || kind === 'barrelMm'

/** Lays the figures of one cell over a line; a problem where they are not those of the order. */
const layFigures = (line: Line, text: string, { order, decimalMark }: SpringTableReading): RowProblem | null => {
  const { parts } = springOrders[order]
  const figures = figuresOf(text)
  if (figures.length > parts.length || figures.length < 2) {
    return { key: 'sizes', label: 'Sizes', problem: { code: 'not-so-many', text, wanted: parts.length } }
  }
  figures.forEach((figure, n) => {
    const [key, unit] = sizeOfPart[parts[n] ?? ''] ?? []
    if (key !== undefined && unit !== undefined) line[key] = writeColumnUnit(pointed(figure, decimalMark), unit)
  })
  return null
}

const lineOf = (cells: readonly string[], reading: SpringTableReading): { line: Line } | { problem: RowProblem } => {
  const line: Line = reading.tray === '' ? {} : { tray: reading.tray }
  for (const [i, { kind, unit }] of reading.columns.entries()) {
    const text = (cells[i] ?? '').trim()
    if (kind === null || text === '') continue
    if (kind === 'sizes') {
      const problem = layFigures(line, text, reading)
      if (problem !== null) return { problem }
    } else line[kind] = isSize(kind) ? writeColumnUnit(pointed(text, reading.decimalMark), unit) : text
  }
  return { line }
}

/**
 * Reads the rows of a list of springs under their columns. Never throws: a row that cannot be taken over is named with its
 * reason, and the others are read all the same. Blank rows and headings that are repeated are passed over. A list without
 * numbers to order by has its springs named by their sizes.
 */
export const readSpringTable = (rows: readonly (readonly string[])[], reading: SpringTableReading): SpringTable => {
  const { headingRows, columns } = reading
  const springs: { row: number; spring: StockSpring }[] = []
  const refused: RefusedSpringRow[] = []
  const rowOfRef = new Map<string, number>()
  const numbered = columns.some(({ kind }) => kind === 'supplierRef')
  const under = (cells: readonly string[]) => columns.map((_, i) => (cells[i] ?? '').trim()).join('\n')
  const heading = columns.map((column) => column.heading).join('\n')
  for (const [at, cells] of rows.slice(headingRows).entries()) {
    const row = headingRows + at + 1
    const said = cells.map((cell) => cell.trim()).filter((cell) => cell !== '')
    if (said.length === 0 || (heading.trim() !== '' && under(cells) === heading)) continue
    const refuse = (problem: RowProblem): void => {
      refused.push({ row, printed: said.join(' · '), problem })
    }
    const laid = lineOf(cells, reading)
    if ('problem' in laid) {
      refuse(laid.problem)
      continue
    }
    const read = readStockSpring(numbered ? laid.line : { ...laid.line, supplierRef: '?' })
    if (!read.ok) {
      refuse(read.problem)
      continue
    }
    const supplierRef = numbered ? read.spring.supplierRef : springLine(read.spring, 'height-thickness-length-barrel')
    const first = rowOfRef.get(supplierRef)
    if (first !== undefined) {
      refuse({ key: 'supplierRef', label: 'Supplier’s number', problem: { code: 'said-twice', row: first } })
      continue
    }
    rowOfRef.set(supplierRef, row)
    springs.push({ row, spring: { ...read.spring, supplierRef } })
  }
  return { springs, refused }
}
