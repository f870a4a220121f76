import type { SizeInSource } from '../fields/field.ts'
import { type LengthUnit, lengthUnitOf } from '../quantities/length-units.ts'

/** The units in which a source may print the sizes of movements. Springs and small sizes are in millimetres in all of them. */
export const sourceUnits = {
  mm: { label: 'millimetres', units: { size: 'mm', height: 'mm' } },
  ligne: { label: 'lignes, heights in millimetres', units: { size: 'ligne', height: 'mm' } },
  douzieme: { label: 'lignes, heights in douzièmes', units: { size: 'ligne', height: 'douzieme' } },
  inch: { label: 'inches', units: { size: 'inch', height: 'inch' } },
} as const satisfies Record<string, { label: string; units: Record<SizeInSource, LengthUnit> }>
type SourceUnits = keyof typeof sourceUnits

const isSourceUnits = (text: string): text is SourceUnits => Object.hasOwn(sourceUnits, text)

/**
 * The choice that a source's words for its units stand for; undefined where they name none, or more than one,
 * so that nothing is taken for granted.
 * @example
 * readSourceUnits('Lignes') // 'ligne'
 * @example
 * readSourceUnits('mm and inch') // undefined
 */
export const readSourceUnits = (unitsAsPrinted = ''): SourceUnits | undefined => {
  const words = unitsAsPrinted.trim().toLowerCase()
  const choice = isSourceUnits(words) ? words : lengthUnitOf(words)
  return choice !== undefined && isSourceUnits(choice) ? choice : undefined
}

/**
 * How the units of a source are said; words of one's own stay as they are.
 * @example
 * wordSourceUnits('ligne') // 'lignes, heights in millimetres'
 * @example
 * wordSourceUnits('mm and inch') // 'mm and inch'
 */
export const wordSourceUnits = (unitsAsPrinted: string): string => {
  const choice = readSourceUnits(unitsAsPrinted)
  return choice === undefined ? unitsAsPrinted : sourceUnits[choice].label
}
