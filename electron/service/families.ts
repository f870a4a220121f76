import type { CaliberEntry } from '../../core/exchange/library-file.ts'
import { chooseBase, foldName, namesOfBase } from '../../core/record/bases.ts'
import type { Caliber } from '../../core/record/caliber.ts'
import { readEntry } from '../../core/record/read-entry.ts'
import { readCaliber } from '../store/calibers.ts'
import { calibersNamed, countProofsAgain, listVariants } from '../store/families.ts'
import type { Library } from '../store/library.ts'
import { proveEntry } from './prove-entry.ts'

/** The calibers on which one is based, the nearest first; `id` is its own, null for one that is not saved yet. */
export const basesOf = async (library: Library, caliber: Caliber, id: number | null): Promise<CaliberEntry[]> => {
  const bases: CaliberEntry[] = []
  const seen = new Set([id])
  let variant: Caliber | undefined = caliber
  while (variant?.values.basedOn !== undefined) {
    const name: string = variant.values.basedOn
    const wanted = foldName(name)
    const stored = (await calibersNamed(library, name))
      .filter(({ id: other }) => !seen.has(other))
      .map((one) => ({ ...one, caliber: readEntry(one.entry).caliber }))
      .filter((one) => namesOfBase(one.caliber).includes(wanted))
    variant = chooseBase(
      variant,
      stored.map((one) => one.caliber),
    )
    const found = stored.find((one) => one.caliber === variant)
    if (found === undefined) break
    seen.add(found.id)
    bases.push(found.entry)
  }
  return bases
}

/** The names under which variants may be based on these calibers. */
export const namesOfEntries = (entries: readonly (CaliberEntry | null)[]): ReadonlySet<string> =>
  new Set(entries.flatMap((entry) => (entry === null ? [] : namesOfBase(readEntry(entry).caliber))))

/**
 * Counts again how many proofs of the variants fail after their bases were changed: of those based on a caliber of
 * these names, directly or through another variant; of every one where no names are given.
 */
export const recountVariants = async (library: Library, changed?: ReadonlySet<string>): Promise<void> => {
  const names = new Set(changed)
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
      const { disagree, doubtful } = proveEntry(entry, await basesOf(library, caliber, id))
      counts.push({ id, disagree, doubtful })
    }
    if (counts.length > 0) await countProofsAgain(library, counts)
  }
}
