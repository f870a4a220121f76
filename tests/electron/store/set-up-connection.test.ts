import { copyFileSync, existsSync, readFileSync, truncateSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { readCaliber } from '../../../electron/store/calibers.ts'
import { applicationId } from '../../../electron/store/check-library-file.ts'
import { openLibrary } from '../../../electron/store/library.ts'
import { newestSchema } from '../../../electron/store/migrate.ts'
import { setUpConnection } from '../../../electron/store/set-up-connection.ts'
import {
  checkWordIndex,
  entryOf,
  save,
  steadyClock,
  temporaryFolder,
  temporaryLibrary,
} from '../../support/temporary-library.ts'

test('every setting that keeps a library safe is in force after reads and writes', async () => {
  const library = await temporaryLibrary()
  await save(library, entryOf('Verrin', '17-220'))
  const setting = (name: string) => library.connection.pragma(name, { simple: true })
  expect(setting('synchronous')).toBe(2)
  expect(setting('journal_mode')).toBe('wal')
  expect(setting('locking_mode')).toBe('exclusive')
  expect(setting('foreign_keys')).toBe(1)
  expect(setting('trusted_schema')).toBe(0)
  expect(setting('cell_size_check')).toBe(1)
  expect(setting('application_id')).toBe(applicationId)
  expect(setting('user_version')).toBe(newestSchema)
})

test('a connection that cannot be set so is refused, naming the setting', () => {
  const inMemory = new Database(':memory:')
  expect(() => setUpConnection(inMemory)).toThrow('journal_mode is memory, not wal')
  inMemory.close()
})

test('after a power cut anywhere in the writing, the first so many saves stand, each whole', async () => {
  const folder = temporaryFolder()
  const empty = await temporaryLibrary()
  await empty.close()
  const base = join(folder, 'base.sqlite')
  copyFileSync(empty.file, base)
  const library = await openLibrary(empty.file, { create: false, now: steadyClock() })
  // Every change stays in the log, and the file itself is the empty library.
  library.connection.pragma('wal_autocheckpoint = 0')
  const log = `${library.file}-wal`
  /** How long the log was when each save was acknowledged. */
  const lengths: number[] = []
  const ids: number[] = []
  for (const designation of ['1', '2', '3', '4', '5', '6']) {
    ids.push(await save(library, entryOf('Verrin', designation, { notes: `note of ${designation}` })))
    // SQLite holds no lock on the log itself, so reading it here drops none.
    lengths.push(readFileSync(log).length)
  }
  const logged = readFileSync(log)
  await library.close()
  const copy = join(folder, 'library.sqlite')
  await fc.assert(
    fc.asyncProperty(fc.integer({ min: 0, max: logged.length }), async (at) => {
      copyFileSync(base, copy)
      writeFileSync(`${copy}-wal`, logged)
      truncateSync(`${copy}-wal`, at)
      const opened = await openLibrary(copy, { create: false, now: steadyClock() })
      const standing = lengths.filter((length) => length <= at).length
      const found = await Promise.all(ids.map((id) => readCaliber(opened, id)))
      expect(found.map((entry) => entry?.designation ?? null)).toEqual(
        ids.map((_, index) => (index < standing ? String(index + 1) : null)),
      )
      expect(opened.connection.pragma('integrity_check', { simple: true })).toBe('ok')
      checkWordIndex(opened)
      await opened.close()
      expect(existsSync(`${copy}-wal`)).toBe(false)
    }),
    { numRuns: 40 },
  )
})
