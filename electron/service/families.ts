import type { CaliberEntry } from '../../core/exchange/library-file.ts'
import { chooseBase, foldName, namesOfBase } from '../../core/record/bases.ts'
import type { Caliber } from '../../core/record/caliber.ts'
import { readEntry } from '../../core/record/read-entry.ts'
import { readCaliber } from '../store/calibers.ts'
import { calibersNamed, countProofsAgain, listVariants, type StoredCaliber } from '../store/families.ts'
import type { Library } from '../store/library.ts'
import { proveEntry } from './prove-entry.ts'

interface ReadCaliber extends StoredCaliber {
  readonly caliber: Caliber
}

/** The calibers that bear a name, read. */
const readNamed = async (library: Library, name: string): Promise<readonly ReadCaliber[]> => {
  const wanted = foldName(name)
  return (await calibersNamed(library, name))
    .map((one) => ({ ...one, caliber: readEntry(one.entry).caliber }))
    .filter(({ caliber }) => namesOfBase(caliber).includes(wanted))
}

/**
 * The calibers on which one is based, the nearest first; `id` is its own, null for one that is not saved yet. `known`
 * keeps what was looked up by name, for as long as no caliber is changed.
 */
export const lineOf = async (
  library: Library,
  caliber: Caliber,
  id: number | null,
  known = new Map<string, readonly ReadCaliber[]>(),
): Promise<readonly StoredCaliber[]> => {
  const bases: StoredCaliber[] = []
  const seen = new Set([id])
  let variant: Caliber | undefined = caliber
  while (variant?.values.basedOn !== undefined) {
    const name: string = variant.values.basedOn
    const named = known.get(name) ?? (await readNamed(library, name))
    known.set(name, named)
    const stored = named.filter(({ id: other }) => !seen.has(other))
    variant = chooseBase(
      variant,
      stored.map((one) => one.caliber),
    )
    const found = stored.find((one) => one.caliber === variant)
    if (found === undefined) break
    seen.add(found.id)
    bases.push({ id: found.id, entry: found.entry })
  }
  return bases
}

/** What the calibers say on which one is based, the nearest first. */
export const basesOf = async (...of: Parameters<typeof lineOf>): Promise<CaliberEntry[]> =>
  (await lineOf(...of)).map(({ entry }) => entry)

/** The names under which variants may be based on these calibers. */
export const namesOfEntries = (entries: readonly (CaliberEntry | null)[]): ReadonlySet<string> =>
  new Set(entries.flatMap((entry) => (entry === null ? [] : namesOfBase(readEntry(entry).caliber))))

/**
 * Counts again how many proofs of the variants fail after their bases were changed: of those based on a caliber of
 * these names, directly or through another variant; of every one where no names are given.
 */
export const recountVariants = async (library: Library, changed?: ReadonlySet<string>): Promise<void> => {
  const names = new Set(changed)
  const known = new Map<string, readonly ReadCaliber[]>()
  let waiting = await listVariants(library)
  for (let due = waiting; due.length > 0; ) {
    due = waiting.filter(({ basedOn }) => changed === undefined || names.has(foldName(basedOn)))
    waiting = waiting.filter((variant) => !due.includes(variant))
    const counts = []
    for (const { id } of due) {
      const entry = await readCaliber(library, id)
      if (entry === null) continue
      const { caliber } = readEntry(entry)
      for (const name of namesOfBase(caliber)) names.add(name)
      const { disagree, doubtful } = proveEntry(entry, await basesOf(library, caliber, id, known))
      counts.push({ id, disagree, doubtful })
    }
    if (counts.length > 0) await countProofsAgain(library, counts)
  }
}

interface Variant extends StoredCaliber {
  /** The bases from it up to the one asked for. */
  readonly between: CaliberEntry[]
}

/** The calibers based on one, directly or through others, those nearest to it first. */
export const variantsOf = async (library: Library, id: number): Promise<Variant[]> => {
  const known = new Map<string, readonly ReadCaliber[]>()
  const names = new Set(namesOfEntries([await readCaliber(library, id)]))
  const variants: Variant[] = []
  let waiting = (await listVariants(library)).filter((variant) => variant.id !== id)
  for (let due = waiting; due.length > 0; ) {
    due = waiting.filter(({ basedOn }) => names.has(foldName(basedOn)))
    waiting = waiting.filter((variant) => !due.includes(variant))
    for (const variant of due) {
      const entry = await readCaliber(library, variant.id)
      if (entry === null) continue
      const { caliber } = readEntry(entry)
      const line = await lineOf(library, caliber, variant.id, known)
      const at = line.findIndex((base) => base.id === id)
      if (at === -1) continue
      for (const name of namesOfBase(caliber)) names.add(name)
      variants.push({ id: variant.id, entry, between: line.slice(0, at).map((base) => base.entry) })
    }
  }
  return variants.sort((one, other) => one.between.length - other.between.length)
}
