import { type CaliberFieldKey, caliberFields } from '../fields/caliber-fields.ts'
import type { FieldDef } from '../fields/field.ts'
import { fieldFromHeading } from '../record/headings.ts'
import { type ColumnUnit, columnUnitOf } from './column-unit.ts'

/** A column of a table that is entered or pasted. */
export interface TableColumn {
  /** The heading as printed; empty where there was none. */
  readonly heading: string
  /** What stands under it; null where the column is left out. */
  readonly field: CaliberFieldKey | null
  /** The unit printed over the column, for the bare numbers under it; null where there was none. */
  readonly unit: ColumnUnit | null
}

/** A heading that ends in its unit: `Diamètre (lignes)`, `Hauteur en mm`, `Durchmesser '''`, `Force, 1/100`. */
const withUnit = [
  /^(.+?)\s*[([]\s*(?:(?:in|en)\s+)?([^()[\]]+?)\s*[)\]]\s*$/iu,
  /^(.+?)[,;:]?\s+(?:in|en)\s+(.+)$/iu,
  /^(.+?)\s*[,;:]\s*(.+)$/u,
  /^(.+?)\s*('''|‴|’’’)$/u,
  /^(.+?)\s+(mm|1\s?\/\s?10{1,3}(?:\s?mm)?)\.?$/iu,
]

/**
 * What a heading says of its column: the field, in any of the four languages, and the unit where one is printed.
 * A unit that the field cannot have is no unit, and then the heading names no field.
 *
 * @example
 * columnFromHeading('Diamètre (lignes)') // { heading: 'Diamètre (lignes)', field: 'diameterMm', unit: 'ligne' }
 * @example
 * columnFromHeading('Rayon') // { heading: 'Rayon', field: null, unit: null }
 */
export const columnFromHeading = (text: string): TableColumn => {
  const heading = text.replace(/^\ufeff/, '').trim()
  for (const pattern of withUnit) {
    const [, name = '', word = ''] = pattern.exec(heading) ?? []
    const field = fieldFromHeading(name)
    const def: FieldDef | undefined = field && caliberFields[field]
    const unit = def && columnUnitOf(def.kind, word)
    if (field && unit) return { heading, field, unit }
  }
  return { heading, field: fieldFromHeading(heading) ?? null, unit: null }
}

/**
 * True where the first row of a pasted table is its headings: it names the designation, or two fields at least.
 *
 * @example
 * isHeadingRow(['Calibre', 'Rayon']) // true
 * @example
 * isHeadingRow(['17-220', '17', '18000']) // false
 */
export const isHeadingRow = (row: readonly string[]): boolean => {
  const fields = row.flatMap((cell) => columnFromHeading(cell).field ?? [])
  return fields.includes('designation') || new Set(fields).size >= 2
}

/** The columns that a table begins with: what the tables of handbooks print most. */
export const usualColumns: readonly CaliberFieldKey[] = [
  'designation',
  'diameterMm',
  'heightMm',
  'beatRateVph',
  'barrelTeeth',
  'centrePinion',
  'centreWheel',
  'thirdPinion',
  'thirdWheel',
  'fourthPinion',
  'fourthWheel',
  'escapePinion',
  'escapeTeeth',
  'springHeightMm',
  'springThicknessMm',
  'springLengthMm',
]
