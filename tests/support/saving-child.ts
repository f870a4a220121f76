import { readEntry } from '../../core/record/read-entry.ts'
import { saveCaliber } from '../../electron/store/calibers.ts'
import { openLibrary } from '../../electron/store/library.ts'
import { madeUpCalibers } from './made-up-calibers.ts'

/** Saves calibers into the library named on the command line until it is killed, saying each id once it is saved. */
const [file = ''] = process.argv.slice(2)
const library = await openLibrary(file, { create: true, now: () => new Date().toISOString() })
for (const entry of madeUpCalibers(100_000, process.pid)) {
  const made = { ...entry, maker: `${entry.maker} ${process.pid}` }
  const values = readEntry(made).caliber
  const id = await saveCaliber(library, null, made, { values, disagree: 0, doubtful: 0, action: 'entry' })
  process.stdout.write(`${id} ${made.designation}\n`)
}
