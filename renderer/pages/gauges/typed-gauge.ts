import { gaugeCells } from '../../../core/exchange/gauge-cells.ts'
import { type GaugeCellProblem, type GaugeCells, readGaugeRows } from '../../../core/exchange/read-gauge-rows.ts'
import type { LengthUnit } from '../../../core/quantities/length-units.ts'
import type { GaugeMeasure, GaugeTable } from '../../../core/springs/gauge-table.ts'

/** The units in which a table may print its sizes. */
export const gaugeUnits = [
  'mm',
  'tenths-mm',
  'hundredths-mm',
  'micrometre',
  'inch',
  'douzieme',
] as const satisfies readonly LengthUnit[]

/** A gauge table as it is typed. Its last row is always blank, to go on in. */
export interface TypedGauge {
  readonly name: string
  readonly measures: GaugeMeasure
  readonly place: NonNullable<GaugeTable['place']> | ''
  readonly source: string
  readonly page: string
  /** The unit in which a bare size is taken. */
  readonly unit: (typeof gaugeUnits)[number]
  readonly cells: readonly GaugeCells[]
}

const blank: GaugeCells = { number: '', size: '' }
const isBlank = ({ number, size }: GaugeCells): boolean => number.trim() === '' && size.trim() === ''
const withBlank = (cells: readonly GaugeCells[]): readonly GaugeCells[] => {
  const last = cells.at(-1)
  return last === undefined || !isBlank(last) ? [...cells, blank] : cells
}

/** A table as the form begins with it; nothing for a new one. */
export const typedGauge = (table: GaugeTable | null): TypedGauge => ({
  name: table?.name ?? '',
  measures: table?.measures ?? 'thickness',
  place: table?.place ?? '',
  source: table?.source ?? '',
  page: table?.page ?? '',
  unit: 'mm',
  cells: withBlank((table?.rows ?? []).map(({ number, mm, printed }) => ({ number, size: printed ?? String(mm) }))),
})

/** The rows with what was typed into one cell. */
export const withCell = (
  cells: readonly GaugeCells[],
  row: number,
  cell: keyof GaugeCells,
  text: string,
): readonly GaugeCells[] => withBlank(cells.map((each, at) => (at === row ? { ...each, [cell]: text } : each)))

/** The rows with a pasted table from one row on: in its place where it is blank, and before what follows. */
export const withPasted = (cells: readonly GaugeCells[], row: number, text: string): readonly GaugeCells[] => {
  const standing = cells[row]
  const replaced = standing !== undefined && isBlank(standing)
  return withBlank(cells.toSpliced(replaced ? row : row + 1, replaced ? 1 : 0, ...gaugeCells(text)))
}

/** The rows without one. */
export const withoutRow = (cells: readonly GaugeCells[], row: number): readonly GaugeCells[] =>
  withBlank(cells.toSpliced(row, 1))

export type GaugeOfTyped =
  | { readonly ok: true; readonly table: GaugeTable }
  | {
      readonly ok: false
      readonly name: 'missing' | 'no-letter' | null
      readonly problems: readonly GaugeCellProblem[]
    }

/** The table that was typed, with what else the stored one says; or all that keeps it from being one. */
export const gaugeOfTyped = (typed: TypedGauge, stored: GaugeTable | null): GaugeOfTyped => {
  const { measures, unit, cells } = typed
  const name = typed.name.trim()
  const { rows, problems } = readGaugeRows(cells, { measures, unit })
  const wrongName = name === '' ? 'missing' : /\p{L}/u.test(name) ? null : 'no-letter'
  if (wrongName !== null || problems.length > 0 || rows.length === 0) return { ok: false, name: wrongName, problems }
  const { place: _, source: __, page: ___, ...rest } = stored ?? {}
  const source = typed.source.trim()
  const page = typed.page.trim()
  return {
    ok: true,
    table: {
      ...rest,
      name,
      measures,
      ...(typed.place === '' ? {} : { place: typed.place }),
      ...(source === '' ? {} : { source }),
      ...(page === '' ? {} : { page }),
      rows: [...rows],
    },
  }
}
