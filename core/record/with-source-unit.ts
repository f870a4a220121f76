import { type CaliberFieldKey, caliberFields } from '../fields/caliber-fields.ts'
import type { FieldDef } from '../fields/field.ts'
import type { LengthUnit } from '../quantities/length-units.ts'
import { readQuantity } from '../quantities/read-quantity.ts'
import { readSourceUnits, sourceUnits } from './source-units.ts'

/** How a unit that the print leaves out is written after the figure. */
const marks: Partial<Record<LengthUnit, string>> = { ligne: "'''", inch: '"', douzieme: ' dz' }

/**
 * The unit in which a bare figure typed for a field is meant, under a source whose units are so stated.
 * @example
 * bareUnit('diameterMm', 'ligne') // 'ligne'
 * @example
 * bareUnit('springHeightMm', 'ligne') // 'mm'
 */
export const bareUnit = (key: CaliberFieldKey, unitsAsPrinted?: string): LengthUnit => {
  const def: FieldDef = caliberFields[key]
  const units = readSourceUnits(unitsAsPrinted)
  const size = 'unitOfSource' in def ? def.unitOfSource : undefined
  return units === undefined || size === undefined ? 'mm' : sourceUnits[units].units[size]
}

/** Figures alone, with what joins two of them; a word or mark of a unit makes them more than that. */
const bareFigures = /^(?:(?:max|min)\w*\.? ?)?[\d¼½¾⅛⅜⅝⅞](?:[\d\s.,/¼½¾⅛⅜⅝⅞…±+–-]|to|bis|tot|à)*$/iu

/** `18/100`: a part of a millimetre whatever the unit of the book; `.75` and the like are no such thing. */
const partOfMillimetre = /\/ ?10{1,3}$/

/**
 * A value as it is kept: where the source leaves the unit of its sizes unprinted, with that unit written, because a bare
 * figure in a file is millimetres. What has a unit of its own, and what would not be readable, stays as typed.
 * @example
 * withSourceUnit('diameterMm', '8 3/4', 'ligne') // "8 3/4'''"
 * @example
 * withSourceUnit('diameterMm', '17 mm', 'ligne') // '17 mm'
 * @example
 * withSourceUnit('heightMm', '22', 'douzieme') // '22 dz'
 */
export const withSourceUnit = (key: CaliberFieldKey, typed: string, unitsAsPrinted?: string): string => {
  const mark = marks[bareUnit(key, unitsAsPrinted)]
  const figures = typed.trim()
  if (mark === undefined || !bareFigures.test(figures) || partOfMillimetre.test(figures)) return typed
  const written = `${figures}${mark}`
  return readQuantity('length', written).ok ? written : typed
}
