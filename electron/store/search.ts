import type { CaliberRow, SearchReason } from '../../core/api/contract.ts'
import { readQuantity } from '../../core/quantities/read-quantity.ts'
import type { Library } from './library.ts'
import { after, plain, wordsOf } from './search-keys.ts'
import { type SearchStatements, searchStatements } from './search-statements.ts'
import { correctionsOf } from './spelling-lookup.ts'

export type SearchHit = CaliberRow & { readonly why: SearchReason }

/** What was typed, taken apart once; nothing of it ever reaches SQLite as syntax. */
interface Typed {
  readonly text: string
  readonly words: readonly string[]
  readonly folded: string
  readonly compact: string
  readonly statements: SearchStatements
  readonly library: Library
}

interface Found {
  readonly rows: readonly CaliberRow[]
  readonly why: (row: CaliberRow) => SearchReason
}

type Tier = (typed: Typed, wanted: number) => Iterable<Found>

/** Splits and makers tried for a maker and a designation typed together. */
const mostWords = 6
const mostMakers = 20

/** Calibers for the words in the search box: the surest ways of finding first, each hit once, with why it was found. */
export const searchCalibers = async (library: Library, words: string, limit: number): Promise<SearchHit[]> => {
  const parted = wordsOf(words).slice(0, 12)
  const typed: Typed = {
    text: words.trim(),
    words: parted,
    folded: parted.join(' '),
    compact: parted.join(''),
    statements: searchStatements(library),
    library,
  }
  const hits = new Map<number, SearchHit>()
  if (typed.words.length === 0) return []
  const take = ({ rows, why }: Found) => {
    for (const row of rows) if (hits.size < limit && !hits.has(row.id)) hits.set(row.id, withReason(row, why))
    return hits.size >= limit
  }
  for (const tier of tiers) for (const found of tier(typed, limit)) if (take(found)) return [...hits.values()]
  if (hits.size === 0) for (const found of bySpelling(typed, limit)) take(found)
  return [...hits.values()]
}

/** The row itself is given its reason: it was fetched for this search alone. */
const withReason = (row: CaliberRow, why: Found['why']): SearchHit => Object.assign(row, { why: why(row) })

const byDesignation: Tier = function* ({ compact, statements }, wanted) {
  yield {
    rows: statements.designation(compact, after(compact), wanted),
    why: ({ designation }) => ({ code: 'designation', matched: designation }),
  }
}

const byMaker: Tier = function* ({ folded, statements }, wanted) {
  yield {
    rows: statements.maker(folded, after(folded), wanted),
    why: ({ maker }) => ({ code: 'maker', matched: maker }),
  }
}

const byMakerAndDesignation: Tier = function* ({ words, statements }, wanted) {
  const why = ({ maker, designation }: CaliberRow): SearchReason => ({
    code: 'maker-and-designation',
    matched: `${maker} ${designation}`,
  })
  for (let split = 1; split < Math.min(words.length, mostWords); split += 1) {
    const [first, second] = [words.slice(0, split), words.slice(split)]
    for (const [maker, designation] of [
      [first.join(' '), second.join('')],
      [second.join(' '), first.join('')],
    ] as const) {
      let last = statements.firstMaker(maker, after(maker))
      for (let tried = 0; last !== undefined && tried < mostMakers; tried += 1) {
        yield { rows: statements.makerAndDesignation(last, designation, after(designation), wanted), why }
        last = statements.nextMaker(last, after(maker))
      }
    }
  }
}

const byAlias: Tier = function* ({ compact, statements }, wanted) {
  const aliases = new Map<number, string>()
  const rows = statements.alias(compact, after(compact), wanted)
  for (const { id, alias } of rows) aliases.set(id, alias)
  yield {
    rows: rows.map(({ alias: _, ...row }) => row),
    why: ({ id }) => ({ code: 'alias', matched: aliases.get(id) ?? '' }),
  }
}

const bySize: Tier = function* ({ text, statements }, wanted) {
  // A bare number is a designation; a size is typed with its unit.
  if (!/\p{N}\s*['′″"’a-zµ]/iu.test(text)) return
  const read = readQuantity('length', text)
  if (!read.ok) return
  const { value, halfStep } = read.quantity
  const either = Math.max(halfStep, 0.005)
  const found = [
    ...statements.sizeUp(value, value + either, wanted),
    ...statements.sizeDown(value, value - either, wanted),
  ]
  const offBy = ({ diameterMm }: CaliberRow) => Math.abs((diameterMm ?? value) - value)
  found.sort((a, b) => offBy(a) - offBy(b) || a.id - b.id)
  yield { rows: found, why: ({ sizePrinted }) => ({ code: 'size', matched: sizePrinted ?? text }) }
}

const byWords: Tier = function* (typed, wanted) {
  const why = (row: CaliberRow): SearchReason => ({ code: 'words', matched: matchedWords(typed, row) })
  const prefixes = typed.words.map((word) => `"${word}"*`)
  yield { rows: typed.statements.words(prefixes.join(' '), wanted), why }
}

const bySpelling: Tier = function* ({ library, words, statements }, wanted) {
  const corrected = words.map((word) => ({ word, near: correctionsOf(library, word) }))
  if (corrected.every(({ near }) => near.length === 0)) return
  const query = corrected
    .map(({ word, near }) => `(${[`"${word}"*`, ...near.map((other) => `"${other}"`)].join(' OR ')})`)
    .join(' AND ')
  const near = new Set(corrected.flatMap((each) => each.near))
  yield {
    rows: statements.words(query, wanted),
    why: ({ id }) => {
      const matched = storedWords(statements.text(id))
      const found = matched.filter((word) => near.has(plain(word)))
      return { code: 'spelling', matched: [...new Set(found)].join(' ') }
    },
  }
}

const tiers: readonly Tier[] = [bySize, byDesignation, byMaker, byMakerAndDesignation, byAlias, byWords]

/** The stored words that begin with what was typed, as they are written. */
const matchedWords = ({ words, statements }: Typed, { id, maker, designation }: CaliberRow): string => {
  const inName = wordsMatching(`${maker} ${designation}`, words)
  const all = inName.length >= words.length ? inName : wordsMatching(statements.text(id), words)
  return [...new Set(all)].join(' ') || designation
}

const storedWords = (text: string): readonly string[] => text.match(/[\p{L}\p{N}\p{M}]+/gu) ?? []

const wordsMatching = (text: string, typed: readonly string[]): string[] => {
  const stored = storedWords(text)
  return typed.flatMap((word) => stored.find((candidate) => plain(candidate).startsWith(word)) ?? [])
}
