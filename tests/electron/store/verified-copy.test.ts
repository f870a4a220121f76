import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { expect, test } from 'vitest'
import { copyVerified } from '../../../electron/store/verified-copy.ts'
import { madeUpCalibers } from '../../support/made-up-calibers.ts'
import { save, temporaryFolder, temporaryLibrary } from '../../support/temporary-library.ts'

/** Every row of every table, in order. */
const contents = (connection: Database.Database): Record<string, unknown[]> =>
  Object.fromEntries(
    (
      connection
        .prepare("select name from sqlite_schema where type = 'table' and name not like 'search_words%' order by name")
        .pluck()
        .all() as string[]
    ).map((name) => [name, connection.prepare(`select * from ${name}`).raw().all()]),
  )

test('the copy holds every row of the library, and its sum is that of the file', async () => {
  const library = await temporaryLibrary()
  for (const entry of madeUpCalibers(12, 4)) await save(library, entry)
  const target = join(temporaryFolder(), 'copy.sqlite')
  const copy = copyVerified(library.connection, target)
  const sha256 = createHash('sha256').update(readFileSync(target)).digest('hex')
  expect(copy).toEqual({ file: target, calibers: 12, sha256 })
  const opened = new Database(target, { readonly: true })
  expect(contents(opened)).toEqual(contents(library.connection))
  opened.close()
})

test('what an earlier try left is cleared away, and the former copy replaced', async () => {
  const library = await temporaryLibrary()
  const folder = temporaryFolder()
  const target = join(folder, 'copy.sqlite')
  writeFileSync(`${target}.unfinished`, 'half a copy')
  writeFileSync(target, 'the former copy')
  copyVerified(library.connection, target)
  expect(readdirSync(folder)).toEqual(['copy.sqlite'])
  expect(readFileSync(target).toString('latin1', 0, 15)).toBe('SQLite format 3')
})

test('a library that is damaged is not copied under a good name', async () => {
  const library = await temporaryLibrary()
  for (const entry of madeUpCalibers(3, 4)) await save(library, entry)
  const folder = temporaryFolder()
  const target = join(folder, 'copy.sqlite')
  // An index that leaves a row out: SQLite copies it willingly, and only the check of the copy sees it.
  library.connection.unsafeMode(true)
  library.connection.pragma('writable_schema = on')
  library.connection
    .prepare("update sqlite_schema set sql = replace(sql, 'where disagree > 0', 'where disagree = 0') where name = ?")
    .run('caliber_disagreeing')
  library.connection.pragma('writable_schema = reset')
  expect(() => copyVerified(library.connection, target)).toThrow()
  expect(existsSync(target)).toBe(false)
  expect(readdirSync(folder)).toEqual([])
})

test('where there is no folder for the copy it fails and makes none', async () => {
  const library = await temporaryLibrary()
  const folder = temporaryFolder()
  expect(() => copyVerified(library.connection, join(folder, 'none', 'copy.sqlite'))).toThrow()
  expect(readdirSync(folder)).toEqual([])
})
