import { caliberFields } from '../fields/caliber-fields.ts'
import { foldHeading } from '../record/fold-heading.ts'
import { readChoice } from '../record/read-choice.ts'

/** The columns of a list of springs in which words stand, with the field that reads them. */
export const wordFields = { end: 'springEnd', material: 'springMaterial' } as const
export type WordKind = keyof typeof wordFields

/** What the reader of a list has said that its words mean, by the word folded: a choice, or an empty text for nothing. */
export type WordMeanings = Readonly<Partial<Record<WordKind, Readonly<Record<string, string>>>>>

/** A word of a list, with what it is read as. */
export interface ListWord {
  readonly kind: WordKind
  /** The word folded, by which its meaning is given. */
  readonly key: string
  readonly printed: string
  /** The choice that it is read as; empty where it says nothing; null where it is not known. */
  readonly meaning: string | null
  /** How many rows have it, and the first of them. */
  readonly rows: number
  readonly firstRow: number
}

/** Reads the words of a list, each once, and counts them. */
export interface WordReader {
  /** The word as the spring has it: a choice, nothing, or as printed where it is not known. */
  readonly read: (kind: WordKind, printed: string, row: number) => string
  readonly words: () => readonly ListWord[]
}

const keyOf = (printed: string): string => foldHeading(printed) || printed

/**
 * A reader of the words of one list. What its user says of a word goes before what the field table knows.
 * @example
 * wordReader({ end: { x7: 'hole' } }).read('end', 'X 7', 2) // 'hole'
 * @example
 * wordReader({}).read('material', 'acier inox', 2) // 'stainless'
 */
export const wordReader = (meanings: WordMeanings): WordReader => {
  const found = new Map<string, { word: Omit<ListWord, 'rows'>; rows: number }>()
  const byPrint = new Map<string, string>()
  const read = (kind: WordKind, printed: string, row: number): string => {
    const print = `${kind} ${printed}`
    const place = byPrint.get(print) ?? `${kind} ${keyOf(printed)}`
    byPrint.set(print, place)
    const known = found.get(place)
    if (known) {
      known.rows += 1
      return known.word.meaning ?? printed
    }
    const key = keyOf(printed)
    const given = meanings[kind]?.[key]
    const own = readChoice(caliberFields[wordFields[kind]], printed)
    const meaning = given ?? (own.ok ? own.value : null)
    found.set(place, { word: { kind, key, printed, meaning, firstRow: row }, rows: 1 })
    return meaning ?? printed
  }
  return { read, words: () => [...found.values()].map(({ word, rows }) => ({ ...word, rows })) }
}
