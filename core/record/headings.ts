import { type CaliberFieldKey, caliberFields } from '../fields/caliber-fields.ts'
import type { FieldDef, MeasuredKind } from '../fields/field.ts'
import { foldHeading } from './fold-heading.ts'

const keys = Object.keys(caliberFields) as readonly CaliberFieldKey[]

/** The unit a heading may carry without changing what a bare number under it means. */
const canonicalUnits: Readonly<Record<MeasuredKind, readonly string[]>> = {
  length: ['mm'],
  rate: ['vph', 'A/h', 'bph'],
  angle: ['deg', '°'],
  duration: ['h', 'hours', 'heures', 'Stunden', 'uur'],
  count: [],
  ratio: [],
  year: [],
}

const unitsOf = (def: FieldDef): readonly string[] =>
  def.kind in canonicalUnits ? canonicalUnits[def.kind as MeasuredKind] : []

/** Every name by which a field is known: its key, its label, and its names in each language. */
export const namesOf = (key: CaliberFieldKey): readonly string[] => {
  const { label, names }: FieldDef = caliberFields[key]
  return [key, label, ...names.en, ...names.fr, ...names.de, ...names.nl]
}

const fieldsByName: ReadonlyMap<string, CaliberFieldKey> = new Map(
  keys.flatMap((key) => namesOf(key).map((name) => [foldHeading(name), key] as const)),
)

/**
 * The heading of a field's column, as a CSV file and a printed table show it.
 *
 * @example
 * headingOf('barrelInsideMm') // 'Barrel inside'
 */
export const headingOf = (key: CaliberFieldKey): string => caliberFields[key].label

/**
 * The field that a column heading names, in any of the four languages, by label or by key; undefined where none is meant.
 * A unit in brackets is allowed where it is the one a bare number is read in: a column headed `Diameter (lignes)`
 * is not recognised, for its numbers would be taken for millimetres.
 *
 * @example
 * fieldFromHeading('Hauteur (mm)') // 'heightMm'
 * @example
 * fieldFromHeading('Diameter (lignes)') // undefined
 */
export const fieldFromHeading = (text: string): CaliberFieldKey | undefined => {
  const whole = fieldsByName.get(foldHeading(text))
  if (whole !== undefined) return whole
  const parts = /^(.*?)\s*[([]\s*([^)\]]*?)\s*[)\]]\s*$/u.exec(text)
  const key = parts === null ? undefined : fieldsByName.get(foldHeading(parts[1] ?? ''))
  if (key === undefined) return undefined
  const unit = (parts?.[2] ?? '').toLowerCase()
  return unitsOf(caliberFields[key]).some((allowed) => allowed.toLowerCase() === unit) ? key : undefined
}
