import { execFileSync } from 'node:child_process'
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { expect, test } from 'vitest'
import { readCaliber } from '../../../electron/store/calibers.ts'
import { applicationId, checkLibraryFile } from '../../../electron/store/check-library-file.ts'
import { openLibrary } from '../../../electron/store/library.ts'
import { newestSchema } from '../../../electron/store/migrate.ts'
import {
  closedLibrary,
  entryOf,
  save,
  steadyClock,
  temporaryFolder,
  temporaryLibrary,
} from '../../support/temporary-library.ts'

const open = (file: string) => openLibrary(file, { create: true, now: steadyClock() })
const failing = (code: string) => ({ failure: expect.objectContaining({ code }) })

/** Opening refuses the file twice, so that the first time left no lock and no mark, and not a byte of it changes. */
const refuses = async (file: string, code: string): Promise<void> => {
  const before = readFileSync(file)
  for (const _ of [1, 2]) await expect(open(file)).rejects.toMatchObject(failing(code))
  expect(readFileSync(file).equals(before)).toBe(true)
}

const fileOf = (content: string): string => {
  const file = join(temporaryFolder(), 'library.sqlite')
  writeFileSync(file, content)
  return file
}

/** A closed library after a change that no version of ours would make. */
const changed = async (change: (connection: Database.Database) => void): Promise<string> => {
  const file = await closedLibrary()
  const connection = new Database(file)
  change(connection)
  connection.close()
  return file
}

test('a sound library passes, and a file that is not there is not found', async () => {
  const file = await closedLibrary()
  const before = readFileSync(file)
  expect(() => checkLibraryFile(file)).not.toThrow()
  expect(readFileSync(file).equals(before)).toBe(true)
  expect(() => checkLibraryFile(`${file}.none`)).toThrow('not-found')
})

test('an empty file is refused and left as it is', () => refuses(fileOf(''), 'library-empty-file'))

test('a folder is no library', async () => {
  const folder = temporaryFolder()
  expect(() => checkLibraryFile(folder)).toThrow('library-not-one')
  await expect(open(folder)).rejects.toMatchObject(failing('library-not-one'))
})

test('a text file is refused and left as it is', () =>
  refuses(fileOf('maker;designation\nVerrin;17-220\n'), 'library-not-one'))

test('a file that only begins as a library does is refused and left as it is', () =>
  refuses(fileOf(`SQLite format 3\0${'maker;designation\n'.repeat(400)}`), 'library-not-one'))

test('another program’s SQLite file is refused and left as it is', async () => {
  const file = join(temporaryFolder(), 'library.sqlite')
  const other = new Database(file)
  other.exec('create table recipes (name text)')
  other.close()
  await refuses(file, 'library-not-one')
})

test('a library under another program’s mark is refused and left as it is', async () => {
  await refuses(await changed((file) => file.pragma(`application_id = ${applicationId + 1}`)), 'library-not-one')
})

test('a library from a newer version is refused and left as it is', async () => {
  const newer = await changed((file) => file.pragma(`user_version = ${newestSchema + 10}`))
  await refuses(newer, 'library-from-newer-version')
})

test('a library cut off after any page is refused as damaged and left as it is', async () => {
  const file = await closedLibrary()
  const whole = readFileSync(file)
  for (let pages = 1; pages < whole.length / 4096; pages += 1) {
    writeFileSync(file, whole.subarray(0, pages * 4096))
    await refuses(file, 'library-damaged')
  }
})

test('a page of noise anywhere in a library does not pass unseen', async () => {
  const file = await closedLibrary()
  const whole = readFileSync(file)
  for (let page = 1; page < whole.length / 4096; page += 1) {
    writeFileSync(file, Buffer.from(whole).fill(0xa5, page * 4096, (page + 1) * 4096))
    await refuses(file, 'library-damaged')
  }
})

/** The bytes as another process reads them: read in this one, the file would lose the locks that SQLite has on it. */
const bytesElsewhere = (file: string): string =>
  execFileSync(process.execPath, [
    '-e',
    "process.stdout.write(require('node:fs').readFileSync(process.argv[1]).toString('base64'))",
    file,
  ]).toString()

test('a library that is open elsewhere is refused without a byte of it or of its unwritten changes touched', async () => {
  const library = await temporaryLibrary()
  const id = await save(library, entryOf('Verrin', '17-220'))
  const files = [library.file, `${library.file}-wal`]
  const before = files.map(bytesElsewhere)
  const opening = `
    import { openLibrary } from ${JSON.stringify(new URL('../../../electron/store/library.ts', import.meta.url).href)}
    const now = () => '2031-01-01T00:00:00.000Z'
    await openLibrary(process.argv[1], { create: true, now }).catch(({ failure }) => console.log(failure.code))`
  const said = execFileSync(process.execPath, ['--input-type=module', '-e', opening, library.file]).toString()
  expect(said.trim()).toBe('library-open-elsewhere')
  expect(files.map(bytesElsewhere)).toEqual(before)
  expect((await readCaliber(library, id))?.designation).toBe('17-220')
})
