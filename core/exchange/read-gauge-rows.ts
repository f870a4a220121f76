import type { LengthUnit } from '../quantities/length-units.ts'
import type { QuantityProblem } from '../quantities/quantity.ts'
import { readQuantity } from '../quantities/read-quantity.ts'
import { gaugeNumber } from '../springs/gauge-number.ts'
import { type GaugeMeasure, type GaugeRow, type GaugeRowProblem, possibleGaugeMm } from '../springs/gauge-table.ts'
import { writeColumnUnit } from './column-unit.ts'

/** A row of a gauge table as it is typed or pasted: the number on the gauge and its size. */
export interface GaugeCells {
  readonly number: string
  readonly size: string
}

/** What of a typed row cannot be read. */
export interface GaugeCellProblem {
  /** Place among the rows given, from nought. */
  readonly row: number
  readonly cell: keyof GaugeCells
  readonly problem:
    | GaugeRowProblem
    | QuantityProblem
    | { readonly code: 'number-missing' | 'size-missing' | 'no-single-size' }
}

/**
 * Reads the rows of a gauge table as typed: sizes as printed (`0,12`, `12/100`, `0.0047"`), a bare number in the unit
 * given. Rows without a word are passed over; every row that cannot be read is named, and is not among the rows.
 * @example
 * readGaugeRows([{ number: '14', size: '12/100' }], { measures: 'thickness', unit: 'mm' }) // { rows: [{ number: '14', mm: 0.12, printed: '12/100' }], problems: [] }
 */
export const readGaugeRows = (
  cells: readonly GaugeCells[],
  { measures, unit }: { readonly measures: GaugeMeasure; readonly unit: LengthUnit },
): { readonly rows: readonly GaugeRow[]; readonly problems: readonly GaugeCellProblem[] } => {
  const rows: GaugeRow[] = []
  const problems: GaugeCellProblem[] = []
  const seen = new Map<string, number>()
  cells.forEach(({ number: typed, size }, row) => {
    const text = typed.trim()
    if (text === '' && size.trim() === '') return
    const before = problems.length
    const refuse = (cell: keyof GaugeCells, problem: GaugeCellProblem['problem']) =>
      problems.push({ row, cell, problem })
    const number = gaugeNumber(text)
    const twin = number === null ? undefined : seen.get(number)
    if (text === '') refuse('number', { code: 'number-missing' })
    else if (number === null) refuse('number', { code: 'no-gauge-number', text })
    else if (twin !== undefined) refuse('number', { code: 'number-twice', text, row: twin })
    else seen.set(number, row)
    if (size.trim() === '') {
      refuse('size', { code: 'size-missing' })
      return
    }
    const printed = writeColumnUnit(size, unit)
    const read = readQuantity('length', printed, possibleGaugeMm(measures))
    if (!read.ok) refuse('size', read.problem)
    else if (read.quantity.low !== undefined || read.quantity.high !== undefined)
      refuse('size', { code: 'no-single-size' })
    if (!read.ok || problems.length > before) return
    const mm = read.quantity.value
    rows.push({ number: text, mm, ...(printed === String(mm) ? {} : { printed }) })
  })
  return { rows, problems }
}
