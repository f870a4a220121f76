import { type CaliberFieldKey, caliberFields } from '../fields/caliber-fields.ts'
import { type OilingPlace, type OilingPlaceDef, oilingGroups, oilingPlaces } from '../fields/oiling-places.ts'
import { type PartKey, partNames } from '../fields/part-names.ts'
import { foldedName } from './folded-name.ts'
import { namesOf } from './headings.ts'

const namesOfKnown = (key: CaliberFieldKey | PartKey): readonly string[] =>
  key in partNames
    ? Object.values(partNames[key as PartKey].names).flat()
    : key in caliberFields
      ? namesOf(key as CaliberFieldKey)
      : []

interface Row {
  readonly known: readonly (CaliberFieldKey | PartKey)[]
  readonly names: readonly string[]
}
const folded = ({ known, names }: Row): readonly string[] => [...names, ...known.flatMap(namesOfKnown)].map(foldedName)

/** Every name and the places it means, the longest first: `barrel arbor` is found before `barrel`. */
const places: readonly (readonly [name: string, places: readonly OilingPlace[]])[] = [
  ...(Object.entries(oilingPlaces) as [OilingPlace, OilingPlaceDef][]).flatMap(([place, row]) =>
    folded(row).map((name) => [name, [place]] as const),
  ),
  ...oilingGroups.flatMap((group) => folded(group).map((name) => [name, group.places] as const)),
].toSorted(([one], [other]) => other.length - one.length)

const joiners = /\s+(?:and|et|und|en)\s+|\s*[,;/&+]\s*/iu

/** A shorter name must be a word of its own: `rol` begins `rolling` too. */
const shortest = 5

/** The longest name that begins at the beginning of a word; it may end within one, as in compounds and plurals. */
const inOne = (text: string): readonly OilingPlace[] => {
  const words = text.split(/[\s'’-]+/u).map(foldedName)
  const rests = words.map((_, at) => words.slice(at).join(''))
  const begins = (name: string) =>
    name.length < shortest ? words.includes(name) : rests.some((rest) => rest.startsWith(name))
  return places.find(([name]) => begins(name))?.[1] ?? []
}

const most = 5000
const known = new Map<string, readonly OilingPlace[]>()

/**
 * The places of oiling that a text names, in any of the four languages; none where it is not known.
 * @example
 * oilingPlacesOf('third and fourth pivots') // ['thirdPivots', 'fourthPivots']
 * @example
 * oilingPlacesOf('Unruhspirale') // ['hairspring']
 */
export const oilingPlacesOf = (text: string): readonly OilingPlace[] => {
  const before = known.get(text)
  if (before !== undefined) return before
  if (known.size >= most) known.clear()
  const pieces = text.split(joiners).flatMap(inOne)
  const found = pieces.length > 0 ? [...new Set(pieces)] : inOne(text)
  known.set(text, found)
  return found
}

const dry =
  /^(dry|(left|leave|keep)dry|none|nothing|no(oil|grease|lubricant|lubrication)?|not(oiled|lubricated)|un(oiled|lubricated)|without(oil|grease|lubricant)|asec|sec|sans(huile|graisse)|rien|aucun|neant|trocken|ohne(ol|oel|fett)|kein(ol|oel|fett)|nicht(olen|oelen|geolt|geoelt)|ungeolt|droog|geen(olie|vet)?|zonderolie|nietolien|)$/

/**
 * True where what is written for a lubricant says that none is used: `dry`, `no oil`, `à sec`, `trocken`, `droog`, a dash.
 * @example
 * isDry('dry, no oil') // true
 * @example
 * isDry('dry graphite') // false
 */
export const isDry = (lubricant: string): boolean => dry.test(foldedName(lubricant.split(/[,;(.]/)[0] ?? ''))
