import { type CaliberFieldKey, caliberFields } from '../fields/caliber-fields.ts'
import type { FieldDef, Language, Names } from '../fields/field.ts'
import { type ListKey, listFields } from '../fields/list-fields.ts'
import { type PartDef, type PartKey, partNameSources, partNames } from '../fields/part-names.ts'
import { namingTraps } from './naming-traps.ts'

export type GlossaryKey = CaliberFieldKey | ListKey | PartKey

/** A word of the book: what it means, what it is called in each language, and what misleads in that. */
export interface GlossaryTerm {
  readonly key: GlossaryKey
  readonly kind: 'field' | 'list' | 'part'
  readonly label: string
  readonly meaning: string
  readonly names: Names
  readonly traps: readonly string[]
  /** Of a field that is chosen: each choice by its label, with what it is called in print. */
  readonly choices: readonly { readonly label: string; readonly names: Names }[]
  /** The names of the choices, by which the term is found too. */
  readonly said: readonly string[]
  /** Of a part: where the name in a language was found in print; from memory where nothing is said. */
  readonly found: Readonly<Partial<Record<Language, readonly string[]>>>
}

interface Row {
  readonly label: string
  readonly meaning: string
  readonly names: Names
}

const term = (
  key: GlossaryKey,
  kind: GlossaryTerm['kind'],
  { label, meaning, names }: Row,
  found: GlossaryTerm['found'] = {},
  choices: GlossaryTerm['choices'] = [],
): GlossaryTerm => {
  const said = choices.flatMap((choice) => Object.values(choice.names).flat())
  return { key, kind, label, meaning, names, traps: namingTraps(key), choices, said, found }
}

const field = (key: CaliberFieldKey): GlossaryTerm => {
  const def: FieldDef = caliberFields[key]
  const choices =
    def.kind !== 'choice'
      ? []
      : Object.entries(def.choiceNames ?? {}).map(([choice, names]) => ({
          label: def.choices[choice] ?? choice,
          names,
        }))
  return term(key, 'field', def, {}, choices)
}

const part = (key: PartKey): GlossaryTerm => {
  const row: PartDef = partNames[key]
  const found = Object.entries(row.found ?? {}).map(([language, sources]) => [
    language,
    sources.map((source) => partNameSources[source]),
  ])
  return term(key, 'part', row, Object.fromEntries(found) as GlossaryTerm['found'])
}

/**
 * Every field and list of a caliber, and every part, with its meaning, in alphabetical order of label.
 *
 * @example
 * glossary().find((term) => term.key === 'barrelInsideMm')?.names.de[0] // 'Federhaus-Innendurchmesser'
 */
export const glossary = (): readonly GlossaryTerm[] =>
  [
    ...(Object.keys(caliberFields) as CaliberFieldKey[]).map(field),
    ...(Object.keys(listFields) as ListKey[]).map((key) => term(key, 'list', listFields[key])),
    ...(Object.keys(partNames) as PartKey[]).map(part),
  ].toSorted((a, b) => (a.label < b.label ? -1 : 1))
