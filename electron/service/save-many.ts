import type { CallOutput, ParsedInput } from '../../core/api/contract.ts'
import { LignebookError } from '../../core/api/errors.ts'
import type { CaliberEntry } from '../../core/exchange/library-file.ts'
import { layOver } from '../../core/record/lay-over.ts'
import { nameOf } from '../store/caliber-rows.ts'
import { findCaliber, readCaliber, type SavedItem, saveCalibers } from '../store/calibers.ts'
import type { Library } from '../store/library.ts'
import { recountVariants } from './families.ts'
import { proveEntry, sayProblem } from './prove-entry.ts'

/**
 * Saves the rows of a table, all or none, as one step that undo takes back. A row with an id is laid over the caliber
 * that the library has. A dry run says which names stand already, and writes nothing.
 */
export const saveMany = async (
  library: Library,
  { items, action, dryRun }: ParsedInput<'calibers.save-many'>,
): Promise<CallOutput<'calibers.save-many'>> => {
  if (dryRun) {
    const first = new Map<string, number>()
    const names: CallOutput<'calibers.save-many'>['names'] = []
    for (const [index, { entry }] of items.entries()) {
      const key = JSON.stringify(nameOf(entry.maker, entry.designation))
      names.push({ standing: await findCaliber(library, entry.maker, entry.designation), twin: first.get(key) ?? null })
      if (!first.has(key)) first.set(key, index)
    }
    return { ids: [], names }
  }
  const laid = new Map<number, CaliberEntry>()
  const saved: SavedItem[] = []
  for (const { caliberId: id, entry: said } of items) {
    const stored = id === null ? null : (laid.get(id) ?? (await readCaliber(library, id)))
    if (id !== null && stored === null)
      throw new LignebookError('not-found', { what: `${said.maker} ${said.designation}` })
    const entry = stored === null ? said : layOver(stored, said)
    if (id !== null) laid.set(id, entry)
    const { problems, ...proved } = proveEntry(entry)
    if (problems.length > 0) throw new LignebookError('unreadable-values', { problems: problems.map(sayProblem) })
    saved.push({ id, entry, ...proved })
  }
  const ids = await saveCalibers(library, saved, action)
  if (ids.length > 0) await recountVariants(library)
  return { ids, names: [] }
}
