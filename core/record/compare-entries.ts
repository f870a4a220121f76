import type { CaliberEntry, EntryReading } from '../exchange/library-file.ts'
import { type ListKey, listFields } from '../fields/list-fields.ts'
import type { Overrule } from '../proofs/severity.ts'
import { sameJson } from './same-json.ts'

type Line = Readonly<Record<string, unknown>>

/**
 * One difference between two states of a caliber: a field with its readings, a list with the lines that differ, the
 * overrule of a proof, or anything else that an entry carries.
 */
export type EntryDifference =
  | {
      readonly what: 'field'
      readonly key: string
      readonly before: readonly EntryReading[]
      readonly after: readonly EntryReading[]
    }
  | {
      readonly what: 'list'
      readonly key: ListKey
      readonly before: readonly Line[]
      readonly after: readonly Line[]
      /** The same lines in another order. */
      readonly moved: boolean
    }
  | {
      readonly what: 'overrule'
      /** The id of the proof. */
      readonly key: string
      readonly before: Overrule | undefined
      readonly after: Overrule | undefined
    }
  | { readonly what: 'other'; readonly key: string; readonly before: unknown; readonly after: unknown }

const listKeys = Object.keys(listFields) as readonly ListKey[]
const compared: ReadonlySet<string> = new Set(['maker', 'designation', 'fields', 'overrules', ...listKeys])

/** The lines of one list that the other has not, each as often as it has it more. */
const without = (lines: readonly Line[], others: readonly Line[]): Line[] => {
  const left = [...others]
  return lines.filter((line) => {
    const at = left.findIndex((other) => sameJson(line, other))
    if (at >= 0) left.splice(at, 1)
    return at < 0
  })
}

const nameAsReading = (text: string | undefined): EntryReading[] =>
  text === undefined || text === '' ? [] : [{ printed: text }]

/** A reading with what it does not state left out; that it is the chosen one of its kind says nothing where it is alone. */
const settled = (readings: readonly EntryReading[]): EntryReading[] =>
  readings.map((reading) => {
    const { chosen, ...rest } = reading
    return chosen === true && readings.length > 1 ? { ...rest, chosen } : rest
  })

const unionOfKeys = (one: object, other: object): string[] => [...new Set([...Object.keys(one), ...Object.keys(other)])]

/**
 * What differs between two states of a caliber, in the order of the entry; null stands for no caliber.
 *
 * @example
 * compareEntries(null, { maker: 'Verrin', designation: '1', fields: {}, jewels: [], lubrication: [], depths: [], parts: [], stripOrder: [] }).map(({ key }) => key) // ['maker', 'designation']
 */
export const compareEntries = (before: CaliberEntry | null, after: CaliberEntry | null): EntryDifference[] => {
  const differences: EntryDifference[] = []
  const field = (key: string, was: readonly EntryReading[], is: readonly EntryReading[]) => {
    if (!sameJson(settled(was), settled(is))) differences.push({ what: 'field', key, before: was, after: is })
  }
  for (const key of ['maker', 'designation'] as const)
    field(key, nameAsReading(before?.[key]), nameAsReading(after?.[key]))
  for (const key of unionOfKeys(before?.fields ?? {}, after?.fields ?? {}))
    field(key, before?.fields[key] ?? [], after?.fields[key] ?? [])
  for (const key of listKeys) {
    const was = before?.[key] ?? []
    const is = after?.[key] ?? []
    const gone = without(was, is)
    const come = without(is, was)
    const moved = gone.length + come.length === 0 && !sameJson(was, is)
    if (gone.length + come.length > 0 || moved)
      differences.push({ what: 'list', key, before: gone, after: come, moved })
  }
  const [had, has] = [before?.overrules ?? [], after?.overrules ?? []]
  for (const key of new Set([...had, ...has].map(({ proof }) => proof))) {
    const was = had.find(({ proof }) => proof === key)
    const is = has.find(({ proof }) => proof === key)
    if (!sameJson(was, is)) differences.push({ what: 'overrule', key, before: was, after: is })
  }
  for (const key of unionOfKeys(before ?? {}, after ?? {}).filter((other) => !compared.has(other))) {
    const was = before?.[key]
    const is = after?.[key]
    if (!sameJson(was, is)) differences.push({ what: 'other', key, before: was, after: is })
  }
  return differences
}
