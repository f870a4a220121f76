import { join } from 'node:path'
import Database from 'better-sqlite3'
import { Kysely, SqliteDialect, sql } from 'kysely'
import { expect, onTestFinished, test } from 'vitest'
import { guardedConnection } from '../../../electron/store/guarded-connection.ts'
import { migrate, newestSchema, schemaOf } from '../../../electron/store/migrate.ts'
import { type Migration, migrations } from '../../../migrations/index.ts'
import { temporaryFolder } from '../../support/temporary-library.ts'

const emptyFile = () => {
  const connection = new Database(join(temporaryFolder(), 'file.sqlite'))
  onTestFinished(() => void connection.close())
  const db = new Kysely<unknown>({ dialect: new SqliteDialect({ database: guardedConnection(connection) }) })
  return { connection, db }
}
const tables = (connection: Database.Database) =>
  connection.prepare("select name from sqlite_schema where type = 'table'").pluck().all()

const step = (number: number, ...statements: readonly string[]): Migration => ({
  number,
  name: `step ${number}`,
  up: async (db) => {
    for (const statement of statements) await sql.raw(statement).execute(db)
  },
})

test('a migration that fails halfway leaves nothing, not even its number', async () => {
  const { connection, db } = emptyFile()
  const failing = {
    ...step(newestSchema + 10),
    up: async (inner: Kysely<unknown>) => {
      await sql`create table half (a text) strict`.execute(inner)
      throw new Error('on purpose')
    },
  }
  await expect(migrate(connection, db, [...migrations, failing])).rejects.toThrow('on purpose')
  expect(schemaOf(connection)).toBe(newestSchema)
  expect(tables(connection)).not.toContain('half')
  expect(connection.pragma('foreign_keys', { simple: true })).toBe(1)
})

test('a migration that leaves rows referring to nothing is taken back', async () => {
  const { connection, db } = emptyFile()
  await migrate(connection, db)
  const dangling = step(newestSchema + 10, "insert into alias values (999, 'lost', 'Lost')")
  await expect(migrate(connection, db, [...migrations, dangling])).rejects.toThrow('refer to nothing')
  expect(schemaOf(connection)).toBe(newestSchema)
  expect(connection.prepare('select count(*) from alias').pluck().get()).toBe(0)
})

test('only the migrations not yet made are made, in their order', async () => {
  const { connection, db } = emptyFile()
  const first = step(10, 'create table made (what text) strict', "insert into made values ('first')")
  const second = step(20, "insert into made values ('second')")
  const third = step(30, "insert into made values ('third')")
  await migrate(connection, db, [first])
  await migrate(connection, db, [first, second, third])
  expect(connection.prepare('select what from made order by rowid').pluck().all()).toEqual(['first', 'second', 'third'])
  expect(schemaOf(connection)).toBe(30)
})

test('running again changes nothing', async () => {
  const { connection, db } = emptyFile()
  await migrate(connection, db)
  const before = connection.pragma('schema_version', { simple: true })
  await migrate(connection, db)
  expect(connection.pragma('schema_version', { simple: true })).toBe(before)
})
