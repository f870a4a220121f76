import { z } from 'zod'
import { type CaliberFieldKey, caliberFields } from '../fields/caliber-fields.ts'
import { readLength } from '../quantities/read-length.ts'
import { gaugeNumber } from './gauge-number.ts'

/** What the numbers of a gauge stand for, and the field of a caliber that it is a size of. */
export const gaugeMeasures = {
  thickness: 'springThicknessMm',
  height: 'springHeightMm',
} as const satisfies Readonly<Record<string, CaliberFieldKey>>
export type GaugeMeasure = keyof typeof gaugeMeasures

/** The sizes in millimetres between which a row of a table can lie: those possible for the field. */
export const possibleGaugeMm = (measures: GaugeMeasure): readonly [number, number] =>
  caliberFields[gaugeMeasures[measures]].possible

/** Where the number stands where several are printed in a row: `12 × 2/0`. */
export const gaugePlaces = ['first', 'second'] as const

const rowSchema = z.looseObject({
  /** As printed: `12`, `2/0`, `5½`. */
  number: z.string().min(1).max(20),
  mm: z.number().positive(),
  /** The size as the table prints it, where that is not the bare number of millimetres. */
  printed: z.string().min(1).max(80).optional(),
})
export type GaugeRow = z.infer<typeof rowSchema>

/** A table of an old gauge without the rules that bind its rows to each other. Loose: what a newer version knows is kept. */
export const gaugeTableShape = z.looseObject({
  /** The gauge as handbooks name it. */
  name: z.string().max(200).regex(/\p{L}/u),
  /** Key of a source on the shelf. */
  source: z.string().max(400).optional(),
  page: z.string().max(40).optional(),
  measures: z.enum(['thickness', 'height'] satisfies GaugeMeasure[]),
  /** Where several numbers are printed in a row, which of them is looked up here; absent where that is not settled. */
  place: z.enum(gaugePlaces).optional(),
  rows: z.array(rowSchema).min(1).max(1000),
})
export type GaugeTable = z.infer<typeof gaugeTableShape>

/** What of a row cannot stand in its table. */
export type GaugeRowProblem =
  | { readonly code: 'no-gauge-number'; readonly text: string }
  | { readonly code: 'number-twice'; readonly text: string; readonly row: number }
  | { readonly code: 'impossible-size'; readonly mm: number; readonly possible: readonly [number, number] }
  | { readonly code: 'print-differs'; readonly text: string; readonly mm: number }

export interface GaugeRowFault {
  /** Place of the row, from nought. */
  readonly row: number
  readonly key: 'number' | 'mm' | 'printed'
  readonly problem: GaugeRowProblem
}

/** Every row that cannot stand in the table, in order. A number that stands twice is told at its second row. */
export const gaugeRowFaults = ({ measures, rows }: GaugeTable): readonly GaugeRowFault[] => {
  const possible = possibleGaugeMm(measures)
  const seen = new Map<string, number>()
  return rows.flatMap(({ number: text, mm, printed }, row): GaugeRowFault[] => {
    const faults: GaugeRowFault[] = []
    const number = gaugeNumber(text)
    const twin = number === null ? undefined : seen.get(number)
    if (number === null) faults.push({ row, key: 'number', problem: { code: 'no-gauge-number', text } })
    else if (twin === undefined) seen.set(number, row)
    else faults.push({ row, key: 'number', problem: { code: 'number-twice', text, row: twin } })
    if (!(mm >= possible[0] && mm <= possible[1]))
      faults.push({ row, key: 'mm', problem: { code: 'impossible-size', mm, possible } })
    const read = printed === undefined ? undefined : readLength(printed)
    if (printed !== undefined && !(read?.ok && Math.abs(read.quantity.value - mm) < 1e-9))
      faults.push({ row, key: 'printed', problem: { code: 'print-differs', text: printed, mm } })
    return faults
  })
}

/** A table of an old gauge that its owner entered: sizes in millimetres by the number on the gauge. */
export const gaugeTableSchema = gaugeTableShape.superRefine((table, context) => {
  for (const { row, key } of gaugeRowFaults(table))
    context.addIssue({ code: 'custom', path: ['rows', row, key], message: 'cannot stand in the table' })
})
