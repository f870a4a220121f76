import type { CaliberEntry, EntryReading } from '../exchange/library-file.ts'
import type { CaliberFieldKey } from '../fields/caliber-fields.ts'
import { type ListKey, listFields } from '../fields/list-fields.ts'
import type { Overrule } from '../proofs/severity.ts'
import { entryKeys } from './entry.ts'
import { readNames, writeNames } from './read-field.ts'

/** Two calibers made one, and what came to the one that stays. */
export interface MergedEntry {
  readonly entry: CaliberEntry
  /** Fields that only the other one stated. */
  readonly filled: readonly string[]
  /** Fields in which the other one says something else, or from somewhere else: its readings stand beside the chosen one. */
  readonly beside: readonly {
    readonly key: string
    readonly chosen: EntryReading
    readonly added: readonly EntryReading[]
  }[]
  readonly lines: readonly { readonly list: ListKey; readonly added: number }[]
  /** Overrules of proofs that only the other one overruled. */
  readonly overrules: readonly Overrule[]
  /** Names under which the one that stays is known from now on. */
  readonly names: readonly string[]
}

type Line = Readonly<Record<string, unknown>>

const isStated = (reading: EntryReading): boolean =>
  reading.printed.trim() !== '' || Boolean(reading.source ?? reading.page ?? reading.note)

const cell = (value: unknown): string => (typeof value === 'object' ? JSON.stringify(value) : String(value).trim())

/** True where everything that `less` says, `more` says too. */
const isWithin = (less: Line, more: Line): boolean =>
  Object.entries(less).every(
    ([key, value]) =>
      key === 'chosen' || value === undefined || (Object.hasOwn(more, key) && cell(value) === cell(more[key])),
  )

/** Adds what is not said yet; what says more of the same takes its place. */
const join = <T extends Line>(kept: readonly T[], others: readonly T[]): { all: T[]; added: T[] } => {
  const all = [...kept]
  const added: T[] = []
  for (const other of others) {
    if (all.some((one) => isWithin(other, one))) continue
    const at = all.findIndex((one) => isWithin(one, other))
    const fuller = all[at]
    if (fuller === undefined) {
      all.push(other)
      added.push(other)
    } else all[at] = { ...other, ...fuller }
  }
  return { all, added }
}

const unmarked = ({ chosen: _, ...reading }: EntryReading): EntryReading => reading as EntryReading

/** The readings that say something, the one that counts marked as `readEntry` finds it. */
const stated = (readings: readonly EntryReading[] = []): EntryReading[] => {
  const found = readings.filter(isStated)
  const marked = readings.find((reading) => reading.chosen === true)
  const chosen = marked && found.includes(marked) ? marked : found[0]
  return found.map((reading) => (reading === chosen ? { ...reading, chosen: true } : unmarked(reading)))
}

/** The other's names, where they are spelt otherwise: it is found under them still. */
const newNames = (keep: CaliberEntry, from: CaliberEntry): readonly string[] => {
  const key = 'alsoKnownAs' satisfies CaliberFieldKey
  const chosen = (entry: CaliberEntry) =>
    readNames(stated(entry.fields[key]).find((reading) => reading.chosen === true)?.printed ?? '')
  const known = new Set([keep.designation.trim(), ...chosen(keep)])
  const sameMaker = keep.maker.trim() === from.maker.trim()
  const theirs = [
    from.designation.trim(),
    ...(sameMaker ? [] : [`${from.maker.trim()} ${from.designation.trim()}`]),
    ...chosen(from),
  ]
  return [...new Set(theirs)].filter((name) => name !== '' && !known.has(name))
}

const withNames = (readings: readonly EntryReading[], names: readonly string[]): EntryReading[] => {
  const chosen = readings.find((reading) => reading.chosen === true)
  const all = [...new Set([...readNames(chosen?.printed ?? ''), ...names])]
  // No source says these names together, so they stand as a reading of their own.
  return [...readings.map(unmarked), { printed: writeNames(all), chosen: true }]
}

/** What a newer version wrote of the other: kept where the one that stays has none; lists are joined. */
const joinUnknown = (keep: CaliberEntry, from: CaliberEntry): Record<string, unknown> => {
  const theirs = Object.entries(from).filter(([key]) => !entryKeys.has(key))
  return Object.fromEntries(
    theirs.flatMap(([key, value]): [string, unknown][] => {
      const own = Object.hasOwn(keep, key) ? keep[key] : undefined
      if (own === undefined) return [[key, value]]
      if (!Array.isArray(own) || !Array.isArray(value)) return []
      const known = new Set(own.map((item) => JSON.stringify(item)))
      return [
        [key, [...(own as unknown[]), ...(value as unknown[]).filter((item) => !known.has(JSON.stringify(item)))]],
      ]
    }),
  )
}

/**
 * Makes two records of one caliber into one. Every reading and every line of both stays; where both state a field, the
 * value of the one that is kept goes on counting, and the other's stands beside it.
 */
export const mergeEntries = (keep: CaliberEntry, from: CaliberEntry): MergedEntry => {
  const fields: Record<string, EntryReading[]> = { ...keep.fields }
  const filled: string[] = []
  const beside: MergedEntry['beside'][number][] = []
  for (const [key, readings] of Object.entries(from.fields)) {
    const theirs = stated(readings)
    if (theirs.length === 0) continue
    const own = stated(Object.hasOwn(keep.fields, key) ? keep.fields[key] : [])
    if (own.length === 0) {
      fields[key] = theirs
      filled.push(key)
      continue
    }
    const { all, added } = join(own, theirs.map(unmarked))
    fields[key] = all
    const chosen = all.find((reading) => reading.chosen === true)
    if (added.length > 0 && chosen) beside.push({ key, chosen, added })
  }
  const names = newNames(keep, from)
  const key = 'alsoKnownAs'
  // Where the names came over whole, they are not said twice.
  const missing = names.filter(
    (name) => !readNames(fields[key]?.find((reading) => reading.chosen === true)?.printed ?? '').includes(name),
  )
  if (missing.length > 0) fields[key] = withNames(stated(fields[key]), missing)

  const lists = Object.keys(listFields) as ListKey[]
  const joined = lists.map((list) => ({ list, ...join(keep[list], from[list]) }))
  const overruled = new Set(keep.overrules?.map(({ proof }) => proof))
  const overrules = (from.overrules ?? []).filter(({ proof }) => !overruled.has(proof))
  return {
    entry: {
      ...keep,
      ...joinUnknown(keep, from),
      fields,
      ...Object.fromEntries(joined.map(({ list, all }) => [list, all])),
      ...(overrules.length > 0 && { overrules: [...(keep.overrules ?? []), ...overrules] }),
    },
    filled,
    beside: beside.filter((one) => one.key !== key),
    lines: joined.filter(({ added }) => added.length > 0).map(({ list, added }) => ({ list, added: added.length })),
    overrules,
    names,
  }
}
