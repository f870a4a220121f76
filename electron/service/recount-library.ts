import { setImmediate } from 'node:timers/promises'
import { proofs } from '../../core/proofs/index.ts'
import { readEntry } from '../../core/record/read-entry.ts'
import { pageOfCalibers, readCaliber } from '../store/calibers.ts'
import { countProofsAgain } from '../store/families.ts'
import type { Library } from '../store/library.ts'
import { readNote, writeNote } from '../store/notes.ts'
import { basesOf } from './families.ts'
import { proveEntry } from './prove-entry.ts'

const stretch = 50

/** What the proofs say of themselves; another text where one was added, or allows something else than before. */
const countedBy = JSON.stringify(proofs.map(({ id, needs, uses, tolerance }) => [id, needs, uses, tolerance.allows]))

/**
 * Counts again how many findings of each caliber are wrong or doubtful, where the counts were made by other proofs: a
 * stretch at a time, so that the library answers meanwhile. Stops where `stopped` says so, and then begins anew next time.
 */
export const recountLibrary = async (library: Library, stopped: () => boolean): Promise<void> => {
  if ((await readNote(library, 'counted-by')) === countedBy) return
  for (let offset = 0; ; offset += stretch) {
    await setImmediate()
    if (stopped()) return
    const page = await pageOfCalibers(library, { offset, limit: stretch })
    if (page.length === 0) break
    const known: Parameters<typeof basesOf>[3] = new Map()
    const counts = []
    for (const { id, disagree, doubtful } of page) {
      const entry = await readCaliber(library, id)
      if (entry === null) continue
      const found = proveEntry(entry, await basesOf(library, readEntry(entry).caliber, id, known))
      if (found.disagree === disagree && found.doubtful === doubtful) continue
      counts.push({ id, disagree: found.disagree, doubtful: found.doubtful })
    }
    if (stopped()) return
    if (counts.length > 0) await countProofsAgain(library, counts)
  }
  writeNote(library, 'counted-by', countedBy)
}
