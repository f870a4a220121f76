import { type GaugeRowProblem, type GaugeTable, gaugeRowFaults, gaugeTableShape } from '../springs/gauge-table.ts'

/** What of a table in a file cannot be read: its place in the table, and why. */
export interface GaugeTableProblem {
  readonly place: string
  readonly problem: GaugeRowProblem | { readonly code: 'not-in-form' }
}

export type GaugeTableRead =
  | { readonly ok: true; readonly table: GaugeTable }
  | { readonly ok: false; readonly problem: GaugeTableProblem }

const placeOf = (path: readonly PropertyKey[]): string =>
  path.map((step, at) => (typeof step === 'number' ? `[${step}]` : `${at > 0 ? '.' : ''}${String(step)}`)).join('')

/**
 * Reads a gauge table as a library file holds it: whole, or not at all with the first place that is wrong.
 * @example
 * readGaugeTable({ name: 'Harrow', measures: 'thickness', rows: [{ number: '14', mm: 0.12 }] }) // { ok: true, table: { name: 'Harrow', measures: 'thickness', rows: [{ number: '14', mm: 0.12 }] } }
 * @example
 * readGaugeTable({ name: 'Harrow', measures: 'thickness', rows: [] }) // { ok: false, problem: { place: 'rows', problem: { code: 'not-in-form' } } }
 */
export const readGaugeTable = (written: unknown): GaugeTableRead => {
  const parsed = gaugeTableShape.safeParse(written)
  if (!parsed.success) {
    const place = placeOf(parsed.error.issues[0]?.path ?? [])
    return { ok: false, problem: { place, problem: { code: 'not-in-form' } } }
  }
  const [fault] = gaugeRowFaults(parsed.data)
  if (fault === undefined) return { ok: true, table: parsed.data }
  return { ok: false, problem: { place: `rows[${fault.row}].${fault.key}`, problem: fault.problem } }
}
