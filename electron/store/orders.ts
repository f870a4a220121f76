import { isDeepStrictEqual } from 'node:util'
import { LignebookError } from '../../core/api/errors.ts'
import type { OrderLine, OrderState } from '../../core/orders/order-line.ts'
import { receivedSpring } from '../../core/orders/received-spring.ts'
import { type Library, rows, write } from './library.ts'
import { beginRevision } from './revisions.ts'
import {
  eraseStock,
  idOfRef,
  noteStockChange,
  orderById,
  springById,
  writeOrder,
  writeSpring,
} from './stock-changes.ts'

export type StoredOrder = OrderLine & { readonly id: number }

/** The order list, oldest line first. */
export const listOrders = async (library: Library): Promise<StoredOrder[]> =>
  rows(library, library.db.selectFrom('order_line').selectAll().orderBy('id')).map(({ id, line }) => ({
    id,
    ...(JSON.parse(line) as OrderLine),
  }))

const held = (library: Library, id: number): OrderLine => {
  const line = orderById(library, id)
  if (line === null) throw new LignebookError('not-found', { what: 'This line of the order list' })
  return line
}

/**
 * Saves a line of the order list as a step that can be taken back.
 * @throws LignebookError not-found
 */
export const saveOrder = async (library: Library, id: number | null, line: OrderLine): Promise<number> =>
  write(library, () => {
    const before = id === null ? null : held(library, id)
    if (id !== null && isDeepStrictEqual(before, line)) return id
    const step = before === null ? 'putting on the order list of' : 'change on the order list of'
    const revision = beginRevision(library, `${step} ${line.what}`)
    const saved = writeOrder(library, id, line)
    noteStockChange(library, revision, 0, { kind: 'order', id: saved, before, after: line })
    return saved
  })

/**
 * Takes a line off the order list; the revision can bring it back.
 * @throws LignebookError not-found
 */
export const removeOrder = async (library: Library, id: number): Promise<void> =>
  write(library, () => {
    const before = held(library, id)
    const revision = beginRevision(library, `taking off the order list of ${before.what}`)
    noteStockChange(library, revision, 0, { kind: 'order', id, before, after: null })
    eraseStock(library, 'order', id)
  })

/**
 * Marks lines of the order list, all or none, as one step.
 * @throws LignebookError not-found
 */
export const markOrders = async (library: Library, ids: readonly number[], state: OrderState): Promise<void> =>
  write(library, () => {
    const changed = ids.map((id) => ({ id, before: held(library, id) })).filter(({ before }) => before.state !== state)
    if (changed.length === 0) return
    const what = changed.length === 1 ? (changed[0]?.before.what ?? '') : `${changed.length} lines of the order list`
    const revision = beginRevision(library, `marking as ${state} of ${what}`)
    changed.forEach(({ id, before }, position) => {
      const after = { ...before, state }
      writeOrder(library, id, after)
      noteStockChange(library, revision, position, { kind: 'order', id, before, after })
    })
  })

/**
 * Lays what a line brought into the owner's own tray, and remembers that on the line, as one step; says how many lie
 * there now.
 * @throws LignebookError not-found; nothing-to-book where the line brings no spring, or did already
 */
export const bookInOrder = async (library: Library, id: number): Promise<{ ref: string; inStock: number }> =>
  write(library, () => {
    const before = held(library, id)
    const spring = receivedSpring(before)
    if (spring === null) throw new LignebookError('nothing-to-book', { what: before.what })
    const springId = idOfRef(library, spring)
    const there = springId === null ? null : springById(library, springId)
    const inStock = (there?.inStock ?? 0) + before.quantity
    const laid = { ...(there ?? spring), inStock }
    const revision = beginRevision(library, `booking in of ${before.quantity} × spring ${spring.supplierRef}`)
    const saved = writeSpring(library, springId, laid)
    noteStockChange(library, revision, 0, { kind: 'spring', id: saved, before: there, after: laid })
    const after = { ...before, bookedIn: true }
    writeOrder(library, id, after)
    noteStockChange(library, revision, 1, { kind: 'order', id, before, after })
    return { ref: spring.supplierRef, inStock }
  })

/** What makes two lines the same one: what is ordered, for what, and when it was put on the list. */
const keyOf = ({ kind, what, caliber, at }: OrderLine): string =>
  JSON.stringify([kind, what, caliber?.maker, caliber?.designation, at])

export interface OrderCounts {
  readonly added: number
  readonly updated: number
  readonly unchanged: number
}

const planOf = (library: Library, lines: readonly OrderLine[]) => {
  const there = new Map(
    rows(library, library.db.selectFrom('order_line').selectAll().orderBy('id')).map(({ id, line }) => {
      const before = JSON.parse(line) as OrderLine
      return [keyOf(before), { id, before }] as const
    }),
  )
  const planned = lines.map((line) => ({ line, ...(there.get(keyOf(line)) ?? { id: null, before: null }) }))
  const changed = planned.filter(({ line, before }) => !isDeepStrictEqual(line, before))
  const counts: OrderCounts = {
    added: changed.filter(({ id }) => id === null).length,
    updated: changed.filter(({ id }) => id !== null).length,
    unchanged: planned.length - changed.length,
  }
  return { changed, counts }
}

/** What bringing in lines would do, without doing it. */
export const foreseeOrders = (library: Library, lines: readonly OrderLine[]): OrderCounts =>
  planOf(library, lines).counts

/** Brings lines in as part of an open revision, from a position on; within its transaction. */
export const bringInOrders = (
  library: Library,
  revision: number,
  lines: readonly OrderLine[],
  position: number,
): void => {
  planOf(library, lines).changed.forEach(({ id, before, line }, index) => {
    const saved = writeOrder(library, id, line)
    noteStockChange(library, revision, position + index, { kind: 'order', id: saved, before, after: line })
  })
}
