import { copyFileSync, existsSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { expect, test } from 'vitest'
import { countCalibers } from '../../../electron/store/calibers.ts'
import { openLibrary, write } from '../../../electron/store/library.ts'
import {
  closedLibrary,
  entryOf,
  save,
  steadyClock,
  temporaryFolder,
  temporaryLibrary,
} from '../../support/temporary-library.ts'

const options = { create: false, now: steadyClock() }
const failing = (code: string) => ({ failure: expect.objectContaining({ code }) })

/** The shared-memory file that the check before opening may leave holds nothing of the library. */
const holdsData = (name: string): boolean => !name.endsWith('-shm')

test('a missing file is not found, and is begun only where asked', async () => {
  const file = join(temporaryFolder(), 'library.sqlite')
  await expect(openLibrary(file, options)).rejects.toMatchObject(failing('not-found'))
  const library = await openLibrary(file, { ...options, create: true })
  expect(await countCalibers(library)).toBe(0)
  await library.close()
  expect(readdirSync(join(file, '..')).filter(holdsData)).toEqual(['library.sqlite'])
})

test('a library that is open elsewhere is refused, in this process and in another connection', async () => {
  const library = await temporaryLibrary()
  const id = await save(library, entryOf('Verrin', '17-220'))
  await expect(openLibrary(library.file, options)).rejects.toMatchObject(failing('library-open-elsewhere'))
  // The one that was open first is none the worse for it.
  await save(library, entryOf('Verrin', '17-221'), id)
  await library.close()
  const other = new Database(library.file)
  other.pragma('locking_mode = EXCLUSIVE')
  other.exec('begin exclusive')
  await expect(openLibrary(library.file, options)).rejects.toMatchObject(failing('library-open-elsewhere'))
  other.close()
  const again = await openLibrary(library.file, options)
  await again.close()
})

test('a library is begun in a folder that is there, and no folder is made for it', async () => {
  const folder = temporaryFolder()
  const file = join(folder, 'none', 'library.sqlite')
  await expect(openLibrary(file, { ...options, create: true })).rejects.toMatchObject(failing('not-found'))
  expect(existsSync(join(folder, 'none'))).toBe(false)
})

test('closing writes everything into the one file', async () => {
  const file = await closedLibrary()
  const copy = join(temporaryFolder(), 'copy.sqlite')
  copyFileSync(file, copy)
  const library = await openLibrary(copy, options)
  expect(await countCalibers(library)).toBe(1)
  await library.close()
  expect(readdirSync(join(file, '..')).filter(holdsData)).toEqual(['library.sqlite'])
})

test('a full disk says so, keeps nothing of the change and leaves the library usable', async () => {
  const library = await temporaryLibrary()
  await save(library, entryOf('Verrin', '17-220'))
  library.connection.pragma(`max_page_count = ${Number(library.connection.pragma('page_count', { simple: true }))}`)
  const bulky = entryOf('Verrin', '17-221', { notes: 'long '.repeat(20_000) })
  await expect(save(library, bulky)).rejects.toMatchObject(failing('disk-full'))
  expect(library.connection.inTransaction).toBe(false)
  expect(await countCalibers(library)).toBe(1)
  library.connection.pragma('max_page_count = 1073741823')
  await save(library, bulky)
  expect(await countCalibers(library)).toBe(2)
})

test('a change that throws leaves nothing behind', async () => {
  const library = await temporaryLibrary()
  expect(() =>
    write(library, () => {
      library.prepare("insert into note values ('a', 'b')").run()
      throw new Error('on purpose')
    }),
  ).toThrow('on purpose')
  expect(library.prepare('select count(*) from note').pluck().get()).toBe(0)
})

test('an older library is copied and checked before it is migrated, and a migration that fails leaves it as it was', async () => {
  const file = await closedLibrary()
  const older = new Database(file)
  // Claims to be older than it is, so that the first migration meets its own tables and fails.
  older.pragma('user_version = 1')
  older.close()
  await expect(openLibrary(file, options)).rejects.toThrow('already exists')
  const copy = readdirSync(join(file, '..')).find((name) => name.includes('.before-schema-'))
  for (const each of [file, join(file, '..', copy ?? '')]) {
    const connection = new Database(each, { readonly: true })
    expect(connection.pragma('user_version', { simple: true })).toBe(1)
    expect(connection.prepare('select designation from caliber').pluck().all()).toEqual(['17-220'])
    connection.close()
  }
})
