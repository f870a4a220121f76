import type { Names } from '../fields/field.ts'
import { foldHeading } from './fold-heading.ts'

/** What can be found by its label and names, and after those by what is said of it. */
interface Findable {
  readonly label: string
  readonly meaning: string
  readonly names?: Names
  readonly traps?: readonly string[]
  readonly said?: readonly string[]
}

const umlauts: Readonly<Record<string, string>> = { ä: 'ae', ö: 'oe', ü: 'ue' }

/** A name folded as printed, and with its umlauts written out. */
const foldings = (name: string): string[] => [
  foldHeading(name),
  foldHeading(name.toLowerCase().replace(/[äöü]/g, (letter) => umlauts[letter] ?? letter)),
]

interface Folded {
  readonly names: readonly string[]
  readonly texts: readonly string[]
}
const folded = new WeakMap<Findable, Folded>()

const foldTerm = (term: Findable): Folded => {
  const known = folded.get(term)
  if (known) return known
  const { label, names, meaning, traps = [], said = [] } = term
  const made = {
    names: [label, ...Object.values(names ?? {}).flat()].flatMap(foldings),
    texts: [meaning, ...traps, ...said].flatMap(foldings),
  }
  folded.set(term, made)
  return made
}

/** How well a term answers, 0 best; undefined where it does not. */
const rank = (term: Findable, whole: string, words: readonly string[]): number | undefined => {
  const { names, texts } = foldTerm(term)
  if (names.includes(whole)) return 0
  if (names.some((name) => name.startsWith(whole))) return 1
  if (names.some((name) => name.includes(whole))) return 2
  if (words.every((word) => names.some((name) => name.includes(word)))) return 3
  if (words.every((word) => [...names, ...texts].some((text) => text.includes(word)))) return 4
  return undefined
}

/**
 * The terms that answer to what is typed, in any of the four languages, the best first: a whole name, its beginning,
 * its inside, scattered words, last the explanation. Case, accents and spaces do not count.
 *
 * @example
 * findTerms([{ key: 'click', kind: 'part', label: 'Click', meaning: '', names: { en: [], fr: ['cliquet'], de: ['Sperrkegel'], nl: [] }, traps: [], found: {} }], 'SPERR').length // 1
 */
export const findTerms = <T extends Findable>(terms: readonly T[], typed: string): readonly T[] => {
  const words = typed
    .split(/\s+/)
    .map(foldHeading)
    .filter((word) => word !== '')
  if (words.length === 0) return terms
  const whole = words.join('')
  return terms
    .flatMap((term) => {
      const found = rank(term, whole, words)
      return found === undefined ? [] : [{ term, found }]
    })
    .toSorted((a, b) => a.found - b.found)
    .map(({ term }) => term)
}
