import { LignebookError } from '../../core/api/errors.ts'
import type { OrderLine } from '../../core/orders/order-line.ts'
import type { GaugeTable } from '../../core/springs/gauge-table.ts'
import type { StockSpring } from '../../core/springs/stock-spring.ts'
import { gaugeById, writeGauge } from './gauge-rows.ts'
import { type Library, rows } from './library.ts'
import type { Tables } from './tables.ts'

interface Stocked {
  readonly spring: StockSpring
  readonly order: OrderLine
  readonly gauge: GaugeTable
}
export type StockKind = keyof Stocked

/** What one step did to one spring, one line of the order list or one gauge table; null where there was none, or is none any more. */
export type StockChange = {
  readonly [K in StockKind]: {
    readonly kind: K
    readonly id: number
    readonly before: Stocked[K] | null
    readonly after: Stocked[K] | null
  }
}[StockKind]

/** A spring as its row says it, with whatever a newer version wrote beside. */
export const springOfRow = (row: Omit<Tables['spring'], 'id'>): StockSpring => ({
  ...(row.tray === '' ? {} : { tray: row.tray }),
  supplierRef: row.supplier_ref,
  heightMm: row.height_mm,
  thicknessMm: row.thickness_mm,
  ...(row.length_mm === null ? {} : { lengthMm: row.length_mm }),
  ...(row.barrel_mm === null ? {} : { barrelMm: row.barrel_mm }),
  ...(row.spring_end === null ? {} : { end: row.spring_end }),
  ...(row.material === null ? {} : { material: row.material }),
  ...(row.in_stock === null ? {} : { inStock: row.in_stock }),
  ...(row.price === null ? {} : { price: row.price }),
  ...(row.note === null ? {} : { note: row.note }),
  ...(row.extra === '{}' ? {} : (JSON.parse(row.extra) as Record<string, unknown>)),
})

const columns = [
  ...['tray', 'supplier_ref', 'height_mm', 'thickness_mm', 'length_mm', 'barrel_mm', 'spring_end', 'material'],
  ...['in_stock', 'price', 'note', 'extra'],
]
const insertSpring =
  `insert into spring (id, ${columns.join(', ')}) values (?, ${columns.map(() => '?').join(', ')}) ` +
  `on conflict (id) do update set ${columns.map((column) => `${column} = excluded.${column}`).join(', ')}`

/** The id of the spring of that number on that tray. */
export const idOfRef = (library: Library, { tray = '', supplierRef }: StockSpring): number | null => {
  const id = library.prepare('select id from spring where tray = ? and supplier_ref = ?').pluck().get(tray, supplierRef)
  return id === undefined ? null : Number(id)
}

/**
 * Writes a spring, a new one under an id that was never given before; within a transaction.
 * @throws LignebookError same-ref where the tray has another spring of its number
 */
export const writeSpring = (library: Library, id: number | null, spring: StockSpring): number => {
  const {
    tray,
    supplierRef,
    heightMm,
    thicknessMm,
    lengthMm,
    barrelMm,
    end,
    material,
    inStock,
    price,
    note,
    ...extra
  } = spring
  const other = idOfRef(library, spring)
  if (other !== null && other !== id) throw new LignebookError('same-ref', { ref: supplierRef, tray: tray ?? '' })
  const sizes = [heightMm, thicknessMm, lengthMm ?? null, barrelMm ?? null]
  const rest = [end ?? null, material ?? null, inStock ?? null, price ?? null, note ?? null, JSON.stringify(extra)]
  const { lastInsertRowid } = library.prepare(insertSpring).run(id, tray ?? '', supplierRef, ...sizes, ...rest)
  return id ?? Number(lastInsertRowid)
}

/** Writes a line of the order list, a new one under an id that was never given before; within a transaction. */
export const writeOrder = (library: Library, id: number | null, line: OrderLine): number => {
  const { lastInsertRowid } = library
    .prepare('insert or replace into order_line (id, line) values (?, ?)')
    .run(id, JSON.stringify(line))
  return id ?? Number(lastInsertRowid)
}

const tables = { spring: 'spring', order: 'order_line', gauge: 'gauge' } as const

/** Takes a spring, a line or a gauge table away; within a transaction. */
export const eraseStock = (library: Library, kind: StockKind, id: number): void => {
  library.prepare(`delete from ${tables[kind]} where id = ?`).run(id)
}

/** A spring as it stands, or null. */
export const springById = (library: Library, id: number): StockSpring | null => {
  const [row] = rows(library, library.db.selectFrom('spring').selectAll().where('id', '=', id))
  return row === undefined ? null : springOfRow(row)
}

/** A line of the order list as it stands, or null. */
export const orderById = (library: Library, id: number): OrderLine | null => {
  const [row] = rows(library, library.db.selectFrom('order_line').select('line').where('id', '=', id))
  return row === undefined ? null : (JSON.parse(row.line) as OrderLine)
}

/** Adds what was done with a spring or a line to an open revision. */
export const noteStockChange = (library: Library, revisionId: number, position: number, change: StockChange): void => {
  library
    .prepare(
      'insert into stock_change (revision_id, position, kind, record_id, before, after) values (?, ?, ?, ?, ?, ?)',
    )
    .run(
      revisionId,
      position,
      change.kind,
      change.id,
      change.before && JSON.stringify(change.before),
      change.after && JSON.stringify(change.after),
    )
}

/** What a revision did with springs and lines, in the order done. */
export const stockChangesOf = (
  library: Library,
  revisionId: number,
  stretch?: { readonly offset: number; readonly limit: number },
): StockChange[] =>
  rows(
    library,
    library.db
      .selectFrom('stock_change')
      .select(['kind', 'record_id as id', 'before', 'after'])
      .where('revision_id', '=', revisionId)
      .orderBy('position')
      .limit(stretch?.limit ?? -1)
      .offset(stretch?.offset ?? 0),
  ).map(({ kind, id, before, after }) => {
    const read = (state: string | null): unknown => (state === null ? null : JSON.parse(state))
    return { kind, id, before: read(before), after: read(after) } as StockChange
  })

/** How each kind stands, and how it is written again. */
const records: {
  readonly [K in StockKind]: {
    readonly byId: (library: Library, id: number) => Stocked[K] | null
    readonly write: (library: Library, id: number, state: Stocked[K]) => number
  }
} = {
  spring: { byId: springById, write: writeSpring },
  order: { byId: orderById, write: writeOrder },
  gauge: { byId: gaugeById, write: writeGauge },
}

const put = <K extends StockKind>(library: Library, kind: K, id: number, state: Stocked[K] | null): void => {
  if (state === null) eraseStock(library, kind, id)
  else records[kind].write(library, id, state)
}

/** Brings what a revision changed to how it was before or after it; within a transaction. */
export const moveStock = (library: Library, revisionId: number, side: 'before' | 'after'): void => {
  const changes = stockChangesOf(library, revisionId)
  for (const change of side === 'before' ? changes.toReversed() : changes)
    put(library, change.kind, change.id, change[side])
}

/** Takes back what one revision did with springs and lines, as changes of another; within a transaction. */
export const takeBackStock = (library: Library, revisionId: number, into: number): void => {
  stockChangesOf(library, revisionId)
    .toReversed()
    .forEach((change, position) => {
      const { kind, id, before } = change
      noteStockChange(library, into, position, {
        kind,
        id,
        before: records[kind].byId(library, id),
        after: before,
      } as StockChange)
      put(library, kind, id, before)
    })
}

/** How many springs and lines a revision changed. */
export const countStockChanges = (library: Library, revisionId: number): number =>
  Number(library.prepare('select count(*) from stock_change where revision_id = ?').pluck().get(revisionId))
