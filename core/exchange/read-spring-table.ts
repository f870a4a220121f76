import type { SpringOrder } from '../springs/spring-line.ts'
import { springLine, springOrders } from '../springs/spring-line.ts'
import type { StockSpring } from '../springs/stock-spring.ts'
import { writeColumnUnit } from './column-unit.ts'
import { type ListWord, type WordMeanings, type WordReader, wordReader } from './list-words.ts'
import { readStockSpring, type StockSpringProblem } from './read-stock-spring.ts'
import type { SpringColumn } from './spring-column.ts'

/** How a list of springs is to be read, as its reader has settled it. */
export interface SpringTableReading {
  readonly headingRows: number
  readonly columns: readonly SpringColumn[]
  readonly decimalMark: '.' | ','
  /** The order of the figures in a cell that holds several. */
  readonly order: SpringOrder
  /** What words of the list mean, where its reader has said so. */
  readonly words: WordMeanings
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
  /** The words of its ends and materials, each once, in the order found. */
  readonly words: readonly ListWord[]
}

/** A list while it is read, so that one of many thousands of rows can be read stretch by stretch. */
export interface SpringTableReader {
  /** Reads on, up to the row of that place; answers whether there are more. */
  readonly readTo: (end: number) => boolean
  readonly table: () => SpringTable
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

/** A mark for nothing, as spreadsheets have it in an empty cell. */
const isBlank = (text: string): boolean => /^(?:[-–—−./]*|n\s?[./]?\s?a\.?|k\.\s?a\.|s\.\s?o\.)$/i.test(text)

/** A number of pieces without the word behind it: `12 pcs`, `3 Stk.` */
const pieces = (text: string): string =>
  /^(\d+)\s*(?:pcs?|pieces?|pces?|pièces?|st(?:k|ck|ück|uks?)?)\.?$/iu.exec(text)?.[1] ?? text

const lineOf = (
  cells: readonly string[],
  row: number,
  reading: SpringTableReading,
  words: WordReader,
): { line: Line } | { problem: RowProblem } => {
  const line: Line = {}
  for (const [i, { kind, unit }] of reading.columns.entries()) {
    const text = (cells[i] ?? '').trim()
    if (kind === null || isBlank(text)) continue
    if (kind === 'sizes') {
      const problem = layFigures(line, text, reading)
      if (problem !== null) return { problem }
    } else if (isSize(kind)) line[kind] = writeColumnUnit(pointed(text, reading.decimalMark), unit)
    else if (kind === 'end' || kind === 'material') line[kind] = words.read(kind, text, row)
    else if (kind === 'note') line.note = line.note === undefined ? text : `${line.note}; ${text}`
    else line[kind] = kind === 'inStock' ? pieces(text) : text
  }
  return { line }
}

/** Begins to read the rows of a list of springs under their columns; see `readSpringTable`. */
export const springTableReader = (
  rows: readonly (readonly string[])[],
  reading: SpringTableReading,
): SpringTableReader => {
  const { headingRows, columns } = reading
  const springs: { row: number; spring: StockSpring }[] = []
  const refused: RefusedSpringRow[] = []
  const rowOfRef = new Map<string, number>()
  const words = wordReader(reading.words)
  const numbered = columns.some(({ kind }) => kind === 'supplierRef')
  const under = (cells: readonly string[]) => columns.map((_, i) => (cells[i] ?? '').trim()).join('\n')
  const heading = columns.map((column) => column.heading).join('\n')
  const headed = heading.trim() !== ''
  const firstHeading = columns[0]?.heading ?? ''
  const isHeading = (cells: readonly string[]): boolean =>
    headed && (cells[0] ?? '').trim() === firstHeading && under(cells) === heading

  /** Takes a spring over, or answers why not. */
  const takeRow = (cells: readonly string[], row: number): RowProblem | null => {
    const laid = lineOf(cells, row, reading, words)
    if ('problem' in laid) return laid.problem
    const read = readStockSpring(numbered ? laid.line : { ...laid.line, supplierRef: '?' })
    if (!read.ok) return read.problem
    const supplierRef = numbered ? read.spring.supplierRef : springLine(read.spring, 'height-thickness-length-barrel')
    const first = rowOfRef.get(supplierRef)
    if (first !== undefined) {
      return { key: 'supplierRef', label: 'Supplier’s number', problem: { code: 'said-twice', row: first } }
    }
    rowOfRef.set(supplierRef, row)
    springs.push({ row, spring: { ...read.spring, supplierRef } })
    return null
  }
  let at = headingRows
  const readTo = (end: number): boolean => {
    for (; at < Math.min(end, rows.length); at += 1) {
      const cells = rows[at] ?? []
      const said = cells.map((cell) => cell.trim()).filter((cell) => cell !== '')
      if (said.length === 0 || isHeading(cells)) continue
      const problem = takeRow(cells, at + 1)
      if (problem !== null) refused.push({ row: at + 1, printed: said.join(' · '), problem })
    }
    return at < rows.length
  }
  return { readTo, table: () => ({ springs, refused, words: words.words() }) }
}

/**
 * Reads the rows of a list of springs under their columns. Never throws: a row that cannot be taken over is named with its
 * reason, and the others are read all the same. Blank rows and headings that are repeated are passed over. A list without
 * numbers to order by has its springs named by their sizes.
 */
export const readSpringTable = (rows: readonly (readonly string[])[], reading: SpringTableReading): SpringTable => {
  const reader = springTableReader(rows, reading)
  reader.readTo(rows.length)
  return reader.table()
}
