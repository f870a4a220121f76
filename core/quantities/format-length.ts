import Fraction from 'fraction.js'
import { ligneMm } from './length-units.ts'

const eighths = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞'] as const
/** Below this many lignes a length is a thickness or a height, not a size, and is written with decimals. */
const leastSizeLignes = 2

const trimmed = (value: number, decimals: number): string => String(Number(value.toFixed(decimals)))

const inLignes = (mm: number): string => {
  const lignes = new Fraction(mm).div(ligneMm).valueOf()
  if (lignes < leastSizeLignes) return `${trimmed(lignes, 3)}‴`
  const count = Math.round(lignes * 8)
  return `${Math.floor(count / 8)}${eighths[count % 8] ?? ''}‴`
}

/**
 * Writes a length with its unit: millimetres to the micrometre (to the hundredth from 10 mm on), lignes to the
 * nearest quarter or eighth as the trade prints them, inches to the ten-thousandth.
 * @example
 * formatLength(19.7385, 'ligne') // '8¾‴'
 */
export const formatLength = (mm: number, unit: 'mm' | 'ligne' | 'inch'): string => {
  if (!Number.isFinite(mm)) return '–'
  if (unit === 'ligne') return inLignes(mm)
  if (unit === 'inch') return `${trimmed(mm / 25.4, 4)} in`
  return `${trimmed(mm, mm >= 10 ? 2 : 3)} mm`
}
