import { join } from 'node:path'
import Database from 'better-sqlite3'
import { Kysely, SqliteDialect } from 'kysely'
import { expect, onTestFinished, test } from 'vitest'
import { guardedConnection } from '../../../electron/store/guarded-connection.ts'
import { temporaryFolder } from '../../support/temporary-library.ts'

interface Notes {
  note: { name: string; content: string }
}

/** A file with one table of notes, that cannot grow by more than a page or two. */
const fullFile = () => {
  const file = join(temporaryFolder(), 'file.sqlite')
  const connection = new Database(file)
  onTestFinished(() => void connection.close())
  connection.exec('create table note (name text primary key, content text not null) strict')
  connection.pragma('max_page_count = 6')
  const db = new Kysely<Notes>({ dialect: new SqliteDialect({ database: guardedConnection(connection) }) })
  const names = () => connection.prepare('select name from note order by name').pluck().all()
  return { file, connection, db, names }
}
const note = (name: string, length = 10) => ({ name, content: 'x'.repeat(length) })

test('a full disk inside a transaction is not hidden, and nothing after it slips in', async () => {
  const { connection, db, names } = fullFile()
  const work = db.transaction().execute(async (transaction) => {
    await transaction.insertInto('note').values(note('first')).execute()
    await transaction
      .insertInto('note')
      .values(note('big', 500_000))
      .execute()
      .catch(() => undefined)
    await transaction.insertInto('note').values(note('stray')).execute()
  })
  await expect(work).rejects.toMatchObject({ code: 'SQLITE_FULL' })
  expect(names()).toEqual([])
  expect(connection.inTransaction).toBe(false)
})

test('the next transaction after a full disk is a transaction like any other', async () => {
  const { db, names } = fullFile()
  const big = db.transaction().execute((inner) => inner.insertInto('note').values(note('big', 500_000)).execute())
  await expect(big).rejects.toMatchObject({ code: 'SQLITE_FULL' })
  await db.transaction().execute((inner) => inner.insertInto('note').values(note('kept')).execute())
  expect(names()).toEqual(['kept'])
  const thrown = db.transaction().execute(async (inner) => {
    await inner.insertInto('note').values(note('dropped')).execute()
    throw new Error('on purpose')
  })
  await expect(thrown).rejects.toThrow('on purpose')
  expect(names()).toEqual(['kept'])
})

test('a failure that SQLite does not roll back by itself passes as it is and ends nothing', async () => {
  const { db, names } = fullFile()
  await db.transaction().execute(async (inner) => {
    await inner.insertInto('note').values(note('one')).execute()
    const twin = inner.insertInto('note').values(note('one')).execute()
    await expect(twin).rejects.toMatchObject({ code: 'SQLITE_CONSTRAINT_PRIMARYKEY' })
    await inner.insertInto('note').values(note('two')).execute()
  })
  expect(names()).toEqual(['one', 'two'])
})

test('a transaction has the file to itself from its beginning', async () => {
  const { file, db } = fullFile()
  const other = new Database(file, { timeout: 0 })
  await db.transaction().execute(async () => {
    expect(() => other.exec("insert into note values ('other', '')")).toThrow('locked')
  })
  other.close()
})
