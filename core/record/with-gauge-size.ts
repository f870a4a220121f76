import type { CaliberEntry } from '../exchange/library-file.ts'
import { gaugeMeasures } from '../springs/gauge-table.ts'
import type { GaugeRead } from '../springs/read-gauge.ts'

/**
 * An entry in which the size that a gauge number comes to by a table stands as a reading of its own, with the place of
 * the table and the gauge as printed; the printed gauge stays. What the entry prints of the size already stays too,
 * and then stays chosen.
 * @example
 * withGaugeSize({ maker: '', designation: '', fields: {}, jewels: [], lubrication: [], depths: [], parts: [], stripOrder: [] }, { table: { name: 'Harrow', source: 'hb', page: '9', measures: 'thickness', rows: [] }, row: { number: '14', mm: 0.12 } }, 'Harrow 14').fields.springThicknessMm // [{ printed: '0.12', source: 'hb', page: '9', note: 'by the gauge table Harrow, from “Harrow 14”' }]
 */
export const withGaugeSize = (entry: CaliberEntry, { table, row }: GaugeRead, gauge: string): CaliberEntry => {
  const field = gaugeMeasures[table.measures]
  const before = (entry.fields[field] ?? []).filter(({ printed }) => printed.trim() !== '')
  const reading = {
    printed: row.printed ?? String(row.mm),
    ...(table.source === undefined ? {} : { source: table.source }),
    ...(table.page === undefined ? {} : { page: table.page }),
    note: `by the gauge table ${table.name}, from “${gauge}”`,
  }
  const chosen = before.some((each) => each.chosen === true)
  const kept = chosen ? before : before.map((each, at) => (at === 0 ? { ...each, chosen: true } : each))
  return { ...entry, fields: { ...entry.fields, [field]: [...kept, reading] } }
}
