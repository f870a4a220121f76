import Papa from 'papaparse'
import { LignebookError } from '../../core/api/errors.ts'
import { entriesFromRows, type TableProblem } from '../../core/exchange/calibers-table.ts'
import type { CaliberEntry, FileAttachment, LibraryFile, Source } from '../../core/exchange/library-file.ts'
import { readGaugeTable } from '../../core/exchange/read-gauge-table.ts'
import { readLibraryFile } from '../../core/exchange/read-library-file.ts'
import { readStockSpring } from '../../core/exchange/read-stock-spring.ts'
import { type OrderLine, orderLineSchema } from '../../core/orders/order-line.ts'
import { openCaliber } from '../../core/record/entry.ts'
import { foldHeading } from '../../core/record/fold-heading.ts'
import type { GaugeTable } from '../../core/springs/gauge-table.ts'
import type { StockSpring } from '../../core/springs/stock-spring.ts'
import { gaugeProblem } from '../../core/wording/gauge-table-problem.ts'
import { stockSpringProblem } from '../../core/wording/stock-spring-problem.ts'
import type { KeptSections } from '../store/kept-sections.ts'

export interface IncomingCaliber {
  /** Where it stands in the file: `calibers[3]` or `row 5`. */
  readonly path: string
  readonly entry: CaliberEntry
  /** True where the file says only part of a caliber, so that the rest of it stays. */
  readonly partial: boolean
}

export interface Incoming {
  readonly sources: readonly Source[]
  readonly calibers: readonly IncomingCaliber[]
  readonly springs: readonly StockSpring[]
  readonly orders: readonly OrderLine[]
  readonly gauges: readonly GaugeTable[]
  readonly sections: KeptSections
  readonly attachments: readonly FileAttachment[]
  readonly refused: readonly { readonly path: string; readonly reason: string }[]
}

/** Reads a file to import: JSON by its first brace, otherwise a table. Nothing of the library is looked at. */
export const readImport = (name: string, text: string): Incoming =>
  /\.csv$/i.test(name) || (!/\.json$/i.test(name) && !/^\ufeff?\s*\{/.test(text))
    ? readTable(name, text)
    : readFile(name, text)

const readFile = (name: string, text: string): Incoming => {
  const {
    lignebook: _,
    sources,
    calibers,
    springs,
    movements,
    attachments = [],
    orders = [],
    gauges = [],
    ...others
  } = readLibraryFile(text, name)
  const stock = readSprings(springs)
  const listed = readOrders(orders)
  const tables = readGauges(gauges)
  return {
    sources,
    calibers: calibers.map((caliber, i) => ({
      path: `calibers[${i}]`,
      entry: openCaliber(caliber),
      partial: false,
    })),
    springs: stock.springs,
    orders: listed.orders,
    gauges: tables.gauges,
    sections: { movements, others },
    attachments,
    refused: [...stock.refused, ...listed.refused, ...tables.refused],
  }
}

type Refused = { readonly path: string; readonly reason: string }

const readSprings = (lines: LibraryFile['springs']) => {
  const springs: StockSpring[] = []
  const refused: Refused[] = []
  const seen = new Set<string>()
  lines.forEach((line, i) => {
    const read = readStockSpring(line)
    if (!read.ok) {
      refused.push({ path: `springs[${i}].${read.problem.key}`, reason: stockSpringProblem(read.problem) })
      return
    }
    const { tray = '', supplierRef } = read.spring
    const name = JSON.stringify([tray, supplierRef])
    if (seen.has(name)) {
      const reason = `Spring ${supplierRef} stands in the file twice; give one of the two another number.`
      refused.push({ path: `springs[${i}].supplierRef`, reason })
    } else springs.push(read.spring)
    seen.add(name)
  })
  return { springs, refused }
}

const readOrders = (lines: NonNullable<LibraryFile['orders']>) => {
  const orders: OrderLine[] = []
  const refused: Refused[] = []
  lines.forEach((line, i) => {
    const read = orderLineSchema.safeParse(line)
    if (read.success) orders.push(read.data)
    else {
      const place = read.error.issues[0]?.path.join('.') ?? ''
      const reason = `${place === '' ? 'This line' : place} cannot be read as a line of the order list; correct it.`
      refused.push({ path: `orders[${i}]${place === '' ? '' : `.${place}`}`, reason })
    }
  })
  return { orders, refused }
}

const readGauges = (lines: NonNullable<LibraryFile['gauges']>) => {
  const gauges: GaugeTable[] = []
  const refused: Refused[] = []
  const seen = new Set<string>()
  lines.forEach((line, i) => {
    const read = readGaugeTable(line)
    if (!read.ok) {
      const { place, problem } = read.problem
      const reason = gaugeProblem(problem)
      refused.push({ path: `gauges[${i}].${place}`, reason: `${reason.charAt(0).toUpperCase()}${reason.slice(1)}` })
      return
    }
    const { name, measures } = read.table
    const key = `${measures} ${foldHeading(name)}`
    if (seen.has(key)) {
      const reason = `The gauge ${name} stands in the file twice for its ${measures}; give one of the two another name.`
      refused.push({ path: `gauges[${i}].name`, reason })
    } else gauges.push(read.table)
    seen.add(key)
  })
  return { gauges, refused }
}

const readTable = (name: string, text: string): Incoming => {
  const { data, errors } = Papa.parse<string[]>(text.replace(/^\ufeff/, ''), { skipEmptyLines: false })
  // A quotation mark that is never closed takes every row after it into one cell.
  const open = errors.find(({ type }) => type === 'Quotes')
  if (open) {
    const what = 'a quotation mark stands there that is not closed as it should be; close it, or write it twice'
    throw new LignebookError('file-not-readable', { file: name, where: `row ${(open.row ?? 0) + 1}`, what })
  }
  const { entries, problems } = entriesFromRows(data)
  const [whole] = problems.filter((problem) => !('row' in problem))
  if (whole) throw new LignebookError('file-not-readable', { file: name, where: 'row 1', what: sayTable(whole) })
  return {
    sources: [],
    calibers: entries.map(({ row, entry }) => ({ path: `row ${row}`, entry, partial: true })),
    springs: [],
    orders: [],
    gauges: [],
    sections: { movements: [], others: {} },
    attachments: [],
    refused: problems.map((problem) => ({
      path: `row ${'row' in problem ? problem.row : 1}`,
      reason: sayTable(problem),
    })),
  }
}

const sayTable = (problem: TableProblem): string => {
  switch (problem.code) {
    case 'no-rows':
      return 'the table is empty; its first row must hold the headings'
    case 'no-column':
      return `no column is headed ${problem.field}; every caliber needs one`
    case 'same-column':
      return `column ${problem.column}, ${problem.heading}, stands there twice; leave one of the two`
    case 'no-name':
      return `the ${problem.field} is missing; fill it in`
    case 'too-many-cells':
      return 'the row has more cells than there are headings; look for a comma that wants quotation marks'
  }
}
