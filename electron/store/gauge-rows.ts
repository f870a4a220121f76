import { LignebookError } from '../../core/api/errors.ts'
import { foldHeading } from '../../core/record/fold-heading.ts'
import type { GaugeTable } from '../../core/springs/gauge-table.ts'
import { type Library, rows } from './library.ts'

export type StoredGauge = GaugeTable & { readonly id: number }

/** Every gauge table, in the order entered. */
export const storedGauges = (library: Library): StoredGauge[] =>
  rows(library, library.db.selectFrom('gauge').selectAll().orderBy('id')).map(({ id, line }) => ({
    id,
    ...(JSON.parse(line) as GaugeTable),
  }))

/** A gauge table as it stands, or null. */
export const gaugeById = (library: Library, id: number): GaugeTable | null => {
  const [row] = rows(library, library.db.selectFrom('gauge').select('line').where('id', '=', id))
  return row === undefined ? null : (JSON.parse(row.line) as GaugeTable)
}

/** The id of the table of that gauge for the same measure, however its name is spaced or spelt. */
export const idOfGauge = (library: Library, { name, measures }: GaugeTable): number | null =>
  storedGauges(library).find((other) => other.measures === measures && foldHeading(other.name) === foldHeading(name))
    ?.id ?? null

/**
 * Writes a gauge table, a new one under an id that was never given before; within a transaction.
 * @throws LignebookError same-gauge where another table has its name and measure
 */
export const writeGauge = (library: Library, id: number | null, table: GaugeTable): number => {
  const other = idOfGauge(library, table)
  if (other !== null && other !== id)
    throw new LignebookError('same-gauge', { name: table.name, measures: table.measures })
  const { lastInsertRowid } = library
    .prepare('insert or replace into gauge (id, line) values (?, ?)')
    .run(id, JSON.stringify(table))
  return id ?? Number(lastInsertRowid)
}
