import type { Names } from '../fields/field.ts'
import { foldHeading } from './fold-heading.ts'

/** A word that is none of a field's choices; `choices` are their labels. */
export interface ChoiceProblem {
  readonly code: 'not-a-choice'
  readonly text: string
  readonly choices: readonly string[]
}

export type ChoiceRead =
  | { readonly ok: true; readonly value: string }
  | { readonly ok: false; readonly problem: ChoiceProblem | { readonly code: 'empty' } }

/** What can be chosen, by key with its label, and what each choice is called besides. */
export interface Choices {
  readonly choices: Readonly<Record<string, string>>
  readonly choiceNames?: Readonly<Record<string, Names>>
}

const umlauts: Readonly<Record<string, string>> = { ä: 'ae', ö: 'oe', ü: 'ue' }

/** A word folded, and with its umlauts written out as older typewriters have them. */
const foldings = (word: string): readonly string[] => [
  foldHeading(word),
  foldHeading(word.toLowerCase().replace(/[äöü]/g, (letter) => umlauts[letter] ?? letter)),
]

/** The words of each field's choices, folded and as they stand, made once for a whole library: labels first. */
const known = new WeakMap<Choices['choices'], ReadonlyMap<string, string>>()

const wordsOf = ({ choices, choiceNames = {} }: Choices): ReadonlyMap<string, string> => {
  const made = known.get(choices)
  if (made) return made
  const words = new Map<string, string>()
  const add = (word: string, key: string): void => {
    for (const form of [word, ...foldings(word)]) if (!words.has(form)) words.set(form, key)
  }
  for (const [key, label] of Object.entries(choices)) add(label, key)
  for (const key of Object.keys(choices)) add(key, key)
  for (const [key, names] of Object.entries(choiceNames)) {
    for (const name of Object.values(names).flat()) add(name, key)
  }
  known.set(choices, words)
  return words
}

/**
 * Recognises a choice by its key, its label or a name in one of the four languages, whatever the capitals, accents,
 * hyphens and commas. A word that is none of them is not guessed at.
 * @example
 * readChoice({ choices: { hole: 'hole' }, choiceNames: { hole: { en: [], fr: ['trou'], de: ['Loch'], nl: ['gat'] } } }, 'LOCH') // { ok: true, value: 'hole' }
 */
export const readChoice = (def: Choices, printed: string): ChoiceRead => {
  if (Object.hasOwn(def.choices, printed)) return { ok: true, value: printed }
  if (printed.trim() === '') return { ok: false, problem: { code: 'empty' } }
  const words = wordsOf(def)
  const value = words.get(printed) ?? words.get(foldHeading(printed))
  if (value !== undefined) return { ok: true, value }
  return { ok: false, problem: { code: 'not-a-choice', text: printed, choices: Object.values(def.choices) } }
}

/**
 * The choice that a word is the beginning of, a label before a name in another language; undefined where it begins none.
 * @example
 * choiceBegunBy({ choices: { hole: 'hole', loop: 'loop' }, choiceNames: { hole: { en: [], fr: ['trou'], de: ['Loch'], nl: ['gat'] } } }, 'loc') // 'hole'
 */
export const choiceBegunBy = (def: Choices, typed: string): string | undefined => {
  const begun = foldHeading(typed)
  if (begun === '') return undefined
  for (const [word, key] of wordsOf(def)) if (foldHeading(word).startsWith(begun)) return key
  return undefined
}
