import Fraction from 'fraction.js'
import type { MeasuredKind } from '../fields/field.ts'
import { formatLength } from './format-length.ts'

/** A narrow space on which no line breaks. */
const thinSpace = '\u202f'

/** Fractions with a greater denominator are written as decimals. */
const greatestDenominator = 12n

const formatRatio = (value: number): string => {
  const near = new Fraction(value).simplify(1e-6)
  return near.d <= greatestDenominator ? near.toFraction(true) : String(Number(value.toFixed(4)))
}

const formatRate = (value: number): string => {
  const [whole = '', decimals] = String(Number(value.toFixed(1))).split('.')
  const grouped = whole.replace(/\B(?=(?:\d{3})+$)/g, thinSpace)
  return decimals ? `${grouped}.${decimals}` : grouped
}

/**
 * Writes a value in the canonical unit of its kind. Lengths, angles and durations carry their unit (`0.18 mm`, `52°`,
 * `36 h`); rates (vibrations an hour, thousands set apart), counts, ratios and years are figures alone.
 * @example
 * formatQuantity('duration', 36) // '36 h'
 */
export const formatQuantity = (kind: MeasuredKind, value: number): string => {
  if (!Number.isFinite(value)) return '–'
  if (kind === 'length') return formatLength(value, 'mm')
  if (kind === 'rate') return formatRate(value)
  if (kind === 'ratio') return formatRatio(value)
  if (kind === 'angle') return `${Number(value.toFixed(2))}°`
  if (kind === 'duration') return `${Number(value.toFixed(2))} h`
  return String(value)
}
