import { isDeepStrictEqual } from 'node:util'
import { LignebookError } from '../../core/api/errors.ts'
import type { StockSpring } from '../../core/springs/stock-spring.ts'
import { trayOrder } from '../../core/springs/tray-order.ts'
import { type Library, rows, write } from './library.ts'
import { beginRevision } from './revisions.ts'
import { eraseStock, idOfRef, noteStockChange, springById, springOfRow, writeSpring } from './stock-changes.ts'

export type StoredSpring = StockSpring & { readonly id: number }

/** Every spring, tray by tray, by number as a person counts. */
export const allSprings = async (library: Library): Promise<StoredSpring[]> =>
  trayOrder(
    rows(library, library.db.selectFrom('spring').selectAll().orderBy('tray').orderBy('supplier_ref')).map(
      ({ id, ...row }) => ({ id, ...springOfRow(row) }),
    ),
  )

const nameOf = ({ supplierRef, tray }: StockSpring): string =>
  tray === undefined ? supplierRef : `${tray} ${supplierRef}`

const held = (library: Library, id: number): StockSpring => {
  const spring = springById(library, id)
  if (spring === null) throw new LignebookError('not-found', { what: 'This spring' })
  return spring
}

/**
 * Saves a spring as a step that can be taken back.
 * @throws LignebookError not-found; same-ref where the tray has another spring of its number
 */
export const saveSpring = async (library: Library, id: number | null, spring: StockSpring): Promise<number> =>
  write(library, () => {
    const before = id === null ? null : held(library, id)
    if (id !== null && isDeepStrictEqual(before, spring)) return id
    const revision = beginRevision(library, `${before === null ? 'entry' : 'change'} of spring ${nameOf(spring)}`)
    const saved = writeSpring(library, id, spring)
    noteStockChange(library, revision, 0, { kind: 'spring', id: saved, before, after: springById(library, saved) })
    return saved
  })

/**
 * Takes a spring out of the tray; the revision can bring it back.
 * @throws LignebookError not-found
 */
export const removeSpring = async (library: Library, id: number): Promise<void> =>
  write(library, () => {
    const before = held(library, id)
    const revision = beginRevision(library, `removal of spring ${nameOf(before)}`)
    noteStockChange(library, revision, 0, { kind: 'spring', id, before, after: null })
    eraseStock(library, 'spring', id)
  })

/**
 * Books springs out of the tray, as they are used.
 * @throws LignebookError not-found; not-so-many where fewer are left, or how many is not known
 */
export const bookOut = async (library: Library, id: number, count: number, reason: string): Promise<number> =>
  write(library, () => {
    const before = held(library, id)
    const left = before.inStock ?? 0
    if (left < count) throw new LignebookError('not-so-many', { ref: before.supplierRef, left, count })
    const after = { ...before, inStock: left - count }
    const why = reason.trim() === '' ? '' : ` for ${reason.trim()}`
    const revision = beginRevision(library, `booking out of ${count} × spring ${nameOf(before)}${why}`)
    writeSpring(library, id, after)
    noteStockChange(library, revision, 0, { kind: 'spring', id, before, after })
    return after.inStock
  })

export interface StockCounts {
  readonly added: number
  readonly updated: number
  readonly unchanged: number
  readonly removed: number
}

interface Planned {
  readonly id: number | null
  readonly before: StockSpring | null
  readonly spring: StockSpring
}

/** What bringing in springs would do. With `replace`, what a tray has beside them goes. */
const planOf = (library: Library, springs: readonly StockSpring[], replace: string | null) => {
  const planned: Planned[] = springs.map((spring) => {
    const id = idOfRef(library, spring)
    return { id, before: id === null ? null : springById(library, id), spring }
  })
  const changed = planned.filter(({ before, spring }) => !isDeepStrictEqual(before, spring))
  const stays = new Set(planned.map(({ id }) => id))
  const gone =
    replace === null
      ? []
      : rows(library, library.db.selectFrom('spring').selectAll().where('tray', '=', replace)).filter(
          ({ id }) => !stays.has(id),
        )
  const counts: StockCounts = {
    added: changed.filter(({ id }) => id === null).length,
    updated: changed.filter(({ id }) => id !== null).length,
    unchanged: planned.length - changed.length,
    removed: gone.length,
  }
  return { changed, gone, counts }
}

/** Brings springs in as the first stock changes of an open revision; within its transaction. */
export const bringInSprings = (
  library: Library,
  revision: number,
  springs: readonly StockSpring[],
  replace: string | null = null,
): StockCounts => {
  const { changed, gone, counts } = planOf(library, springs, replace)
  let position = 0
  for (const { id, ...row } of gone) {
    noteStockChange(library, revision, position++, { kind: 'spring', id, before: springOfRow(row), after: null })
    eraseStock(library, 'spring', id)
  }
  for (const { id, before, spring } of changed) {
    const saved = writeSpring(library, id, spring)
    noteStockChange(library, revision, position++, { kind: 'spring', id: saved, before, after: spring })
  }
  return counts
}

/** What bringing in springs would do, without doing it. */
export const foreseeSprings = (
  library: Library,
  springs: readonly StockSpring[],
  replace: string | null = null,
): StockCounts => planOf(library, springs, replace).counts

/** Brings a list in as one step that can be taken back; with `replace`, the tray then holds these and no others. */
export const saveSprings = async (
  library: Library,
  springs: readonly StockSpring[],
  { action, replace }: { readonly action: string; readonly replace: string | null },
): Promise<StockCounts> =>
  write(library, () => {
    const counts = foreseeSprings(library, springs, replace)
    if (counts.added + counts.updated + counts.removed === 0) return counts
    return bringInSprings(library, beginRevision(library, action), springs, replace)
  })
