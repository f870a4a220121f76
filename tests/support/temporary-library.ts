import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { onTestFinished } from 'vitest'
import type { CaliberEntry } from '../../core/exchange/library-file.ts'
import { readEntry } from '../../core/record/read-entry.ts'
import { saveCaliber } from '../../electron/store/calibers.ts'
import { type Library, openLibrary } from '../../electron/store/library.ts'

/** A clock for tests: each reading a second after the last. */
export const steadyClock = (): (() => string) => {
  let second = 0
  return () => new Date(Date.UTC(2031, 0, 1, 0, 0, second++)).toISOString()
}

/** A folder that is gone after the test. */
export const temporaryFolder = (): string => {
  const folder = mkdtempSync(join(tmpdir(), 'lignebook-'))
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }))
  return folder
}

/** An empty library in a folder of its own, closed and gone after the test. */
export const temporaryLibrary = async (): Promise<Library> => {
  const library = await openLibrary(join(temporaryFolder(), 'library.sqlite'), { create: true, now: steadyClock() })
  onTestFinished(() => library.close())
  return library
}

/** An entry with the given fields as printed, and nothing else. */
export const entryOf = (
  maker: string,
  designation: string,
  fields: Readonly<Record<string, string>> = {},
  more: Partial<CaliberEntry> = {},
): CaliberEntry => ({
  maker,
  designation,
  fields: Object.fromEntries(Object.entries(fields).map(([key, printed]) => [key, [{ printed }]])),
  jewels: [],
  lubrication: [],
  depths: [],
  parts: [],
  stripOrder: [],
  ...more,
})

/** Saves an entry as the service does, with no proof that fails. */
export const save = (library: Library, entry: CaliberEntry, id: number | null = null): Promise<number> =>
  saveCaliber(library, id, entry, {
    values: readEntry(entry).caliber,
    disagree: 0,
    doubtful: 0,
    action: `${id === null ? 'entry' : 'change'} of ${entry.maker} ${entry.designation}`,
  })

/** A closed library with one caliber, Verrin 17-220. */
export const closedLibrary = async (): Promise<string> => {
  const library = await temporaryLibrary()
  await save(library, entryOf('Verrin', '17-220', { beatRateVph: '18 000' }))
  await library.close()
  return library.file
}

/** Throws where the word index says other than the words that are stored. */
export const checkWordIndex = ({ connection }: Library): void => {
  connection.exec("insert into search_words (search_words, rank) values ('integrity-check', 1)")
}
