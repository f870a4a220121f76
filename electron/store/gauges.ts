import { isDeepStrictEqual } from 'node:util'
import { LignebookError } from '../../core/api/errors.ts'
import type { GaugeTable } from '../../core/springs/gauge-table.ts'
import { gaugeById, idOfGauge, type StoredGauge, storedGauges, writeGauge } from './gauge-rows.ts'
import { type Library, write } from './library.ts'
import type { OrderCounts } from './orders.ts'
import { beginRevision } from './revisions.ts'
import { eraseStock, noteStockChange } from './stock-changes.ts'

/** Every gauge table, in the order entered. */
export const listGauges = async (library: Library): Promise<StoredGauge[]> => storedGauges(library)

const held = (library: Library, id: number): GaugeTable => {
  const table = gaugeById(library, id)
  if (table === null) throw new LignebookError('not-found', { what: 'This gauge table' })
  return table
}

/**
 * Saves a gauge table as a step that can be taken back.
 * @throws LignebookError not-found; same-gauge where another table has its name and measure
 */
export const saveGauge = async (library: Library, id: number | null, table: GaugeTable): Promise<number> =>
  write(library, () => {
    const before = id === null ? null : held(library, id)
    if (id !== null && isDeepStrictEqual(before, table)) return id
    const revision = beginRevision(library, `${before === null ? 'entry' : 'change'} of gauge table ${table.name}`)
    const saved = writeGauge(library, id, table)
    noteStockChange(library, revision, 0, { kind: 'gauge', id: saved, before, after: table })
    return saved
  })

/**
 * Takes a gauge table out of the library; the revision can bring it back.
 * @throws LignebookError not-found
 */
export const removeGauge = async (library: Library, id: number): Promise<void> =>
  write(library, () => {
    const before = held(library, id)
    const revision = beginRevision(library, `removal of gauge table ${before.name}`)
    noteStockChange(library, revision, 0, { kind: 'gauge', id, before, after: null })
    eraseStock(library, 'gauge', id)
  })

const planOf = (library: Library, tables: readonly GaugeTable[]) => {
  const planned = tables.map((table) => {
    const id = idOfGauge(library, table)
    return { id, table, before: id === null ? null : gaugeById(library, id) }
  })
  const changed = planned.filter(({ table, before }) => !isDeepStrictEqual(table, before))
  const counts: OrderCounts = {
    added: changed.filter(({ id }) => id === null).length,
    updated: changed.filter(({ id }) => id !== null).length,
    unchanged: planned.length - changed.length,
  }
  return { changed, counts }
}

/** What bringing in gauge tables would do, without doing it. */
export const foreseeGauges = (library: Library, tables: readonly GaugeTable[]): OrderCounts =>
  planOf(library, tables).counts

/** Brings gauge tables in as part of an open revision, from a position on; within its transaction. */
export const bringInGauges = (
  library: Library,
  revision: number,
  tables: readonly GaugeTable[],
  position: number,
): void => {
  planOf(library, tables).changed.forEach(({ id, before, table }, index) => {
    const saved = writeGauge(library, id, table)
    noteStockChange(library, revision, position + index, { kind: 'gauge', id: saved, before, after: table })
  })
}
