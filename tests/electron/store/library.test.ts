import { copyFileSync, readdirSync, readFileSync, truncateSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { expect, test } from 'vitest'
import { backUp } from '../../../electron/store/backup.ts'
import { countCalibers } from '../../../electron/store/calibers.ts'
import { applicationId } from '../../../electron/store/check-library-file.ts'
import { openLibrary, write } from '../../../electron/store/library.ts'
import { newestSchema } from '../../../electron/store/migrate.ts'
import { entryOf, save, steadyClock, temporaryFolder, temporaryLibrary } from '../../support/temporary-library.ts'

const options = { create: false, now: steadyClock() }
const failing = (code: string) => ({ failure: expect.objectContaining({ code }) })

/** The shared-memory file that the check before opening may leave holds nothing of the library. */
const holdsData = (name: string): boolean => !name.endsWith('-shm')

/** A closed library with one caliber. */
const closedLibrary = async (): Promise<string> => {
  const library = await temporaryLibrary()
  await save(library, entryOf('Verrin', '17-220', { beatRateVph: '18 000' }))
  await library.close()
  return library.file
}

const refuses = async (file: string, code: string): Promise<void> => {
  const before = readFileSync(file)
  await expect(openLibrary(file, options)).rejects.toMatchObject(failing(code))
  expect(readFileSync(file).equals(before)).toBe(true)
  // And a second time: the refusal left no lock and no mark behind.
  await expect(openLibrary(file, options)).rejects.toMatchObject(failing(code))
}

test('a missing file is not found, and is begun only where asked', async () => {
  const file = join(temporaryFolder(), 'library.sqlite')
  await expect(openLibrary(file, options)).rejects.toMatchObject(failing('not-found'))
  const library = await openLibrary(file, { ...options, create: true })
  expect(await countCalibers(library)).toBe(0)
  await library.close()
  expect(readdirSync(join(file, '..')).filter(holdsData)).toEqual(['library.sqlite'])
})

test('an empty file is refused and left as it is', async () => {
  const file = join(temporaryFolder(), 'library.sqlite')
  writeFileSync(file, '')
  await refuses(file, 'library-empty-file')
})

test('a text file is refused and left as it is', async () => {
  const file = join(temporaryFolder(), 'library.sqlite')
  writeFileSync(file, 'maker;designation\nVerrin;17-220\n')
  await refuses(file, 'library-not-one')
})

test('another program’s SQLite file is refused and left as it is', async () => {
  const file = join(temporaryFolder(), 'library.sqlite')
  const other = new Database(file)
  other.exec('create table recipes (name text)')
  other.close()
  await refuses(file, 'library-not-one')
})

test('a file cut in half is refused as damaged and left as it is', async () => {
  const file = await closedLibrary()
  truncateSync(file, Math.floor(readFileSync(file).length / 2 / 4096) * 4096)
  await refuses(file, 'library-damaged')
})

test('a library from a newer version is refused and left as it is', async () => {
  const file = await closedLibrary()
  const connection = new Database(file)
  connection.pragma(`user_version = ${newestSchema + 10}`)
  connection.close()
  await refuses(file, 'library-from-newer-version')
})

test('a library that is open elsewhere is refused, in this process and in another connection', async () => {
  const library = await temporaryLibrary()
  await expect(openLibrary(library.file, options)).rejects.toMatchObject(failing('library-open-elsewhere'))
  await library.close()
  const other = new Database(library.file)
  other.pragma('locking_mode = EXCLUSIVE')
  other.exec('begin exclusive')
  await expect(openLibrary(library.file, options)).rejects.toMatchObject(failing('library-open-elsewhere'))
  other.close()
  const again = await openLibrary(library.file, options)
  await again.close()
})

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

test('every table of ours is strict', async () => {
  const library = await temporaryLibrary()
  const loose = library.connection
    .prepare("select name from pragma_table_list where schema = 'main' and type = 'table' and strict = 0")
    .pluck()
    .all()
  expect(loose.filter((name) => name !== 'sqlite_schema' && name !== 'sqlite_sequence')).toEqual([])
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

test('a full disk inside a kysely transaction is not hidden, and nothing after it slips in', async () => {
  const library = await temporaryLibrary()
  library.connection.pragma(`max_page_count = ${Number(library.connection.pragma('page_count', { simple: true }))}`)
  const note = (name: string, length: number) => ({ name, content: 'x'.repeat(length) }) as const
  const work = library.db.transaction().execute(async (transaction) => {
    await transaction.insertInto('note').values(note('first', 10)).execute()
    await transaction
      .insertInto('note')
      .values(note('big', 500_000))
      .execute()
      .catch(() => undefined)
    await transaction.insertInto('note').values(note('stray', 10)).execute()
  })
  await expect(work).rejects.toMatchObject({ code: 'SQLITE_FULL' })
  expect(library.prepare('select count(*) from note').pluck().get()).toBe(0)
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

test('a backup is whole, is named only when checked, and opens as a library', async () => {
  const library = await temporaryLibrary()
  await save(library, entryOf('Verrin', '17-220'))
  const folder = temporaryFolder()
  const copy = await backUp(library, join(folder, 'backup.sqlite'))
  expect(copy).toMatchObject({ calibers: 1, sha256: expect.stringMatching(/^[0-9a-f]{64}$/) })
  expect(readdirSync(folder)).toEqual(['backup.sqlite'])
  const opened = await openLibrary(copy.file, options)
  expect(await countCalibers(opened)).toBe(1)
  await opened.close()
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
