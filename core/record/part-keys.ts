import { caliberFields } from '../fields/caliber-fields.ts'
import { type PartKey, partNames } from '../fields/part-names.ts'
import { type ToothedField, toothedFields } from '../trains/depth-counts.ts'
import { foldedName } from './folded-name.ts'

/** A part of a movement: one of the glossary, or a toothed one by the field of its count. */
export type AnyPart = PartKey | ToothedField

const namesOfPart = (key: AnyPart): readonly string[] => {
  const { label, names } = key in partNames ? partNames[key as PartKey] : caliberFields[key as ToothedField]
  return [label, ...Object.values(names).flat()]
}

/** Every name of these parts in the four languages, folded. */
export const foldedNamesOf = (keys: readonly AnyPart[]): readonly string[] => [
  ...new Set(keys.flatMap(namesOfPart).map(foldedName)),
]

const keysByName = new Map<string, AnyPart[]>()
for (const key of [...(Object.keys(partNames) as PartKey[]), ...toothedFields]) {
  for (const name of foldedNamesOf([key])) keysByName.set(name, [...(keysByName.get(name) ?? []), key])
}
const none: readonly AnyPart[] = []

/**
 * The parts that a name stands for in any of the four languages: none where it is not known, several where it misleads.
 * @example
 * partKeys('Sperrkegel') // ['click']
 * @example
 * partKeys('coq') // ['cock', 'balanceCock']
 */
export const partKeys = (name: string): readonly AnyPart[] => keysByName.get(foldedName(name)) ?? none
