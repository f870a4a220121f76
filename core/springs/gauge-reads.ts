import Fraction from 'fraction.js'
import { exactValue, printedSpan } from '../proofs/exact-value.ts'
import { plain } from '../quantities/plain.ts'
import type { Caliber } from '../record/caliber.ts'
import { type GaugeMeasure, type GaugeTable, gaugeMeasures } from './gauge-table.ts'
import { type GaugeDoubt, type GaugeRead, readGauge } from './read-gauge.ts'

/** What a caliber states of a size, beside what its printed gauge number comes to by a table. */
export interface GaugeBesideStated {
  readonly stated: number
  /** By the table, less stated; in millimetres. */
  readonly differenceMm: number
  /** True where the table's size lies within what the stated one may be by its print. */
  readonly agrees: boolean
}

export interface GaugeOfCaliber extends GaugeRead {
  readonly measures: GaugeMeasure
  /** Null where the caliber does not state the size. */
  readonly beside: GaugeBesideStated | null
}

/** A caliber's gauge as printed, and what its owner's tables make of it. */
export interface GaugeReads {
  readonly printed: string
  readonly reads: readonly GaugeOfCaliber[]
  readonly doubts: readonly GaugeDoubt[]
}

const besideStated = ({ values, readings }: Caliber, measures: GaugeMeasure, mm: number): GaugeBesideStated | null => {
  const field = gaugeMeasures[measures]
  const stated = values[field]
  if (stated === undefined) return null
  const difference = new Fraction(String(mm)).sub(exactValue(readings, field, stated))
  const { below, above } = printedSpan(readings, field)
  const agrees = difference.gte(new Fraction(String(-below))) && difference.lte(new Fraction(String(above)))
  return { stated, differenceMm: plain(difference.valueOf()), agrees }
}

/** The printed gauge of a caliber's spring looked up in the tables there are; null where it has none, or there are none. */
export const gaugeReads = (caliber: Caliber, tables: readonly GaugeTable[]): GaugeReads | null => {
  const printed = caliber.values.springGauge
  if (printed === undefined || tables.length === 0) return null
  const { reads, doubts } = readGauge(printed, tables)
  return {
    printed,
    doubts,
    reads: reads.map(({ table, row }) => ({
      table,
      row,
      measures: table.measures,
      beside: besideStated(caliber, table.measures, row.mm),
    })),
  }
}
