import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { expect, onTestFinished, test } from 'vitest'
import { LignebookError } from '../../../core/api/errors.ts'
import { sqliteFailure } from '../../../electron/store/sqlite-failure.ts'
import { temporaryFolder } from '../../support/temporary-library.ts'

const open = (file: string): Database.Database => {
  const connection = new Database(file, { timeout: 0 })
  onTestFinished(() => void connection.close())
  return connection
}
const newFile = () => join(temporaryFolder(), 'library.sqlite')

/** What SQLite throws, as it throws it. */
const thrownBy = (work: () => unknown): unknown => {
  try {
    work()
  } catch (error) {
    return error
  }
  throw new Error('nothing was thrown')
}

const says = (error: unknown, file: string) => {
  const failure = sqliteFailure(error, file)
  return failure instanceof LignebookError ? failure.failure : failure
}

test('a disk that is full is said to be full', () => {
  const file = newFile()
  const connection = open(file)
  connection.exec('create table note (content text)')
  connection.pragma('max_page_count = 3')
  const error = thrownBy(() => connection.prepare('insert into note values (?)').run('x'.repeat(50_000)))
  expect(says(error, file)).toEqual({ code: 'disk-full', details: { file } })
})

test('a file that SQLite does not know is no library', () => {
  const file = newFile()
  writeFileSync(file, 'maker;designation\n'.repeat(300))
  const error = thrownBy(() => open(file).pragma('user_version'))
  expect(says(error, file)).toEqual({ code: 'library-not-one', details: { file } })
})

test('a file with a page of noise is damaged', () => {
  const file = newFile()
  const connection = open(file)
  connection.exec("create table note (content text); insert into note values ('a')")
  const page = connection.serialize()
  const broken = Buffer.from(page).fill(0xa5, 4096, 8192)
  writeFileSync(`${file}.broken`, broken)
  const error = thrownBy(() => open(`${file}.broken`).prepare('select * from note').all())
  expect(says(error, file)).toEqual({ code: 'library-damaged', details: { file } })
})

test('a file that another program is writing is open elsewhere', () => {
  const file = newFile()
  const [first, second] = [open(file), open(file)]
  first.exec('create table note (content text); begin exclusive')
  const error = thrownBy(() => second.exec('begin immediate'))
  expect(says(error, file)).toEqual({ code: 'library-open-elsewhere', details: { file } })
})

test('a slip of our own is not passed off as a trouble of the file', () => {
  const file = newFile()
  const connection = open(file)
  connection.exec("create table note (name text unique); insert into note values ('a')")
  for (const text of ["insert into note values ('a')", 'select nothing from nowhere']) {
    const error = thrownBy(() => connection.exec(text))
    expect(sqliteFailure(error, file)).toBe(error)
  }
  const other = new LignebookError('same-name')
  expect(sqliteFailure(other, file)).toBe(other)
  expect(sqliteFailure('text', file)).toBe('text')
})

test('a place where no file can be opened is said to be so', () => {
  const folder = temporaryFolder()
  writeFileSync(join(folder, 'note'), '')
  for (const error of [
    thrownBy(() => open(folder)),
    thrownBy(() => writeFileSync(folder, '')),
    thrownBy(() => writeFileSync(join(folder, 'note', 'library.sqlite'), '')),
  ])
    expect(says(error, folder)).toEqual({ code: 'library-not-openable', details: { file: folder } })
})
