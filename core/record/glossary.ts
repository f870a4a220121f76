import { type CaliberFieldKey, caliberFields } from '../fields/caliber-fields.ts'
import type { FieldDef, Names } from '../fields/field.ts'
import { type ListDef, type ListKey, listFields } from '../fields/list-fields.ts'

/** A word of the book: what it means, and what it is called in each language. */
export interface GlossaryTerm {
  readonly key: CaliberFieldKey | ListKey
  readonly label: string
  readonly meaning: string
  readonly names: Names
}

const term = (key: GlossaryTerm['key'], { label, meaning, names }: FieldDef | ListDef): GlossaryTerm => ({
  key,
  label,
  meaning,
  names,
})

/**
 * Every field and list of a caliber with its meaning, in alphabetical order of label.
 *
 * @example
 * glossary().find((term) => term.key === 'barrelInsideMm')?.names.de[0] // 'Federhaus-Innendurchmesser'
 */
export const glossary = (): readonly GlossaryTerm[] =>
  [
    ...(Object.keys(caliberFields) as CaliberFieldKey[]).map((key) => term(key, caliberFields[key])),
    ...(Object.keys(listFields) as ListKey[]).map((key) => term(key, listFields[key])),
  ].toSorted((a, b) => (a.label < b.label ? -1 : 1))
