import type { FieldKind, MeasuredKind } from '../fields/field.ts'
import { lengthUnitOf } from '../quantities/length-units.ts'
import type { PrintedUnit } from '../quantities/quantity.ts'
import { tidyPrint } from '../quantities/tidy-print.ts'

/** A unit that stands once, over a column, for the bare numbers under it. */
export type ColumnUnit = Exclude<PrintedUnit, 'count' | 'ratio' | 'year'>

/** The units in which a column of each kind may be printed; the first is the one a bare number is read in anyway. */
const unitsByKind: Readonly<Record<MeasuredKind, readonly ColumnUnit[]>> = {
  length: ['mm', 'ligne', 'douzieme', 'inch', 'tenths-mm', 'hundredths-mm', 'micrometre'],
  rate: ['vph', 'per-minute', 'per-second', 'hertz'],
  duration: ['hour', 'day'],
  angle: ['degree'],
  count: [],
  ratio: [],
  year: [],
}

/**
 * The units in which a column of values of that kind may be printed, the canonical one first.
 *
 * @example
 * columnUnitsOf('duration') // ['hour', 'day']
 */
export const columnUnitsOf = (kind: FieldKind): readonly ColumnUnit[] =>
  Object.hasOwn(unitsByKind, kind) ? unitsByKind[kind as MeasuredKind] : []

const beats = String.raw`(?:v|vibrations?|b|beats?|a|alt\.?|alternances?|halbschwingungen|halve slagen)?`
const per = String.raw`\s*(?:\/|per|par|pro|je|à l')\s*`
const words: readonly (readonly [ColumnUnit, RegExp])[] = [
  ['tenths-mm', /^(?:1 ?\/ ?10(?: ?mm)?|dixièmes?(?: de mm)?|zehntel(?: ?mm)?)$/],
  ['hundredths-mm', /^(?:1 ?\/ ?100(?: ?mm)?|centièmes?(?: de mm)?|hundertstel(?: ?mm)?|hundredths?(?: of a mm)?)$/],
  ['micrometre', /^(?:1 ?\/ ?1000(?: ?mm)?)$/],
  ['vph', new RegExp(`^(?:vph|bph|${beats}${per}(?:h|hr|hour|heure|stunde|std|uur)\\.?)$`)],
  ['per-minute', new RegExp(`^${beats}${per}(?:min|minute|minuut)\\.?$`)],
  ['per-second', new RegExp(`^${beats}${per}(?:s|sec|second|seconde|sekunde|sek)\\.?$`)],
  ['hertz', /^(?:hz|hertz)$/],
  ['hour', /^(?:h|hrs?|hours?|heures?|stunden?|std|uur|uren)\.?$/],
  ['day', /^(?:d|days?|j|jours?|tagen?|tage?|tg|dag(?:en)?)\.?$/],
  ['degree', /^(?:°|deg|degrees?|degrés?|grad|graden)\.?$/],
]

/**
 * The unit that a heading names for a column of that kind; undefined where it is none or another kind's.
 *
 * @example
 * columnUnitOf('length', 'lignes') // 'ligne'
 * @example
 * columnUnitOf('length', '1/100 mm') // 'hundredths-mm'
 * @example
 * columnUnitOf('count', 'mm') // undefined
 */
export const columnUnitOf = (kind: FieldKind, text: string): ColumnUnit | undefined => {
  const word = tidyPrint(text).toLowerCase()
  const unit = lengthUnitOf(word) ?? words.find(([, pattern]) => pattern.test(word))?.[0]
  return unit !== undefined && columnUnitsOf(kind).includes(unit) ? unit : undefined
}

/** What is written behind a bare number so that it says its unit. */
const marks: Readonly<Partial<Record<ColumnUnit, string>>> = {
  ligne: "'''",
  douzieme: ' dz',
  inch: '"',
  micrometre: ' µm',
  'per-minute': '/min',
  'per-second': '/s',
  hertz: ' Hz',
  day: ' d',
}
const decimalShift: Readonly<Partial<Record<ColumnUnit, number>>> = { 'tenths-mm': 1, 'hundredths-mm': 2 }

/** A decimal so many places further left, digit by digit, so that nothing is rounded. */
const shifted = (whole: string, decimals: string, places: number): string => {
  const digits = `${whole.padStart(places + 1, '0')}${decimals}`
  const point = digits.length - decimals.length - places
  return `${digits.slice(0, point)}.${digits.slice(point)} mm`
}

/**
 * Writes the unit of its column to a bare number, so that the value says it by itself wherever it goes from there.
 * What carries a unit already, and what is no number, stays as printed.
 *
 * @example
 * writeColumnUnit('17', 'ligne') // "17'''"
 * @example
 * writeColumnUnit('18', 'hundredths-mm') // '18/100'
 * @example
 * writeColumnUnit('17,5', 'hundredths-mm') // '0.175 mm'
 * @example
 * writeColumnUnit('38.3 mm', 'ligne') // '38.3 mm'
 */
export const writeColumnUnit = (printed: string, unit: ColumnUnit | null): string => {
  const text = printed.trim()
  if (
    unit === null ||
    !/^[.,]?[\d¼½¾⅓⅔⅙⅚⅛⅜⅝⅞]/u.test(text) ||
    !/^[\d.,\s'’/⁄¼½¾⅓⅔⅙⅚⅛⅜⅝⅞–-]*[\d¼½¾⅓⅔⅙⅚⅛⅜⅝⅞]$/u.test(text)
  )
    return text
  const places = decimalShift[unit]
  if (places !== undefined) {
    const [figures, whole = '', decimals = ''] = /^(\d*)(?:[.,](\d+))?$/.exec(text) ?? []
    if (figures === undefined) return text
    return decimals === '' ? `${whole}/${10 ** places}` : shifted(whole, decimals, places)
  }
  const mark = marks[unit]
  return mark === undefined ? text : `${text}${mark}`
}
