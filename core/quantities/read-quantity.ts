import Fraction from 'fraction.js'
import type { MeasuredKind } from '../fields/field.ts'
import type { PrintedUnit, Quantity, QuantityProblem, QuantityRead } from './quantity.ts'
import { readDuration } from './read-duration.ts'
import { readLength } from './read-length.ts'
import { readAngle, readCount, readRatio } from './read-plain.ts'
import { readRate } from './read-rate.ts'
import { readYear } from './read-year.ts'

interface KindReader {
  readonly read: (text: string) => QuantityRead
  readonly unit: PrintedUnit
  /** True where a bare whole number is exact. */
  readonly wholeIsExact: boolean
}

const readers: Readonly<Record<MeasuredKind, KindReader>> = {
  length: { read: readLength, unit: 'mm', wholeIsExact: false },
  rate: { read: readRate, unit: 'vph', wholeIsExact: false },
  angle: { read: readAngle, unit: 'degree', wholeIsExact: false },
  duration: { read: readDuration, unit: 'hour', wholeIsExact: false },
  count: { read: readCount, unit: 'count', wholeIsExact: true },
  ratio: { read: readRatio, unit: 'ratio', wholeIsExact: true },
  year: { read: readYear, unit: 'year', wholeIsExact: true },
}

/** A bare figure in the canonical unit. Its exact fraction is made when asked for, since most figures are only compared. */
const bareQuantity = (value: number, unit: PrintedUnit, halfStep: number): Quantity => ({
  value,
  unit,
  halfStep,
  get exact() {
    return new Fraction(String(value))
  },
})

/** Plain decimals make up nearly all of a library; they are read here without further ado. */
const readBare = (text: string, { unit, wholeIsExact }: KindReader): QuantityRead | undefined => {
  if (text.length > 9 || !/^\d+(?:[.,]\d+)?$/.test(text)) return undefined
  const comma = text.indexOf(',')
  // A comma before three digits may be a thousands mark, which is the kind's own affair.
  if (comma >= 0 && text.length - comma === 4) return undefined
  const point = comma >= 0 ? comma : text.indexOf('.')
  if (point >= 0 && (unit === 'vph' || unit === 'count' || unit === 'year')) return undefined
  if (unit === 'year' && text.length !== 3 && text.length !== 4) return undefined
  const halfStep = point < 0 ? (wholeIsExact ? 0 : 0.5) : 0.5 / 10 ** (text.length - point - 1)
  return { ok: true, quantity: bareQuantity(Number(comma < 0 ? text : text.replace(',', '.')), unit, halfStep) }
}

/** `1e-9`, as a program writes a very small or large number; no handbook does, and its `e` is no unit. */
const isExponent = (text: string): boolean => /^\s*[+-]?[\d.,]+e[+-]?\d+\s*$/i.test(text)

const outside = ({ value, low, high }: Quantity, [least, most]: readonly [number, number]): number | undefined =>
  [value, low, high].find((figure) => figure !== undefined && !(figure >= least && figure <= most))

/**
 * Reads a value of one kind as printed, into the canonical unit of the kind. Never throws; refuses with a reason
 * what cannot be read, what can be read two ways, and what lies outside `possible`.
 */
export const readQuantity = (kind: MeasuredKind, text: string, possible?: readonly [number, number]): QuantityRead => {
  const reader = readers[kind]
  const read: QuantityRead =
    readBare(text, reader) ??
    (isExponent(text) ? { ok: false, problem: { code: 'unreadable', text } } : reader.read(text))
  if (!read.ok || !possible) return read
  const value = outside(read.quantity, possible)
  if (value === undefined) return read
  const problem: QuantityProblem = { code: 'impossible', text, value, possible }
  return { ok: false, problem }
}
