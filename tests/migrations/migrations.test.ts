import { join } from 'node:path'
import Database from 'better-sqlite3'
import { Kysely, SqliteDialect, sql } from 'kysely'
import { expect, onTestFinished, test } from 'vitest'
import { guardedConnection } from '../../electron/store/guarded-connection.ts'
import { migrate, newestSchema, schemaOf } from '../../electron/store/migrate.ts'
import { migrations } from '../../migrations/index.ts'
import { temporaryFolder } from '../support/temporary-library.ts'

const emptyFile = () => {
  const connection = new Database(join(temporaryFolder(), 'file.sqlite'))
  onTestFinished(() => void connection.close())
  const db = new Kysely<unknown>({ dialect: new SqliteDialect({ database: guardedConnection(connection) }) })
  return { connection, db }
}
const tables = (connection: Database.Database) =>
  connection
    .prepare("select name from sqlite_schema where type = 'table' and name not like 'search_words_%'")
    .pluck()
    .all()

test('migrations are numbered upwards in tens', () => {
  const numbers = migrations.map(({ number }) => number)
  expect(numbers).toEqual([...numbers].sort((a, b) => a - b))
  expect(numbers.every((number) => number % 10 === 0)).toBe(true)
})

test('0010-library makes the library as it first shipped', async () => {
  const { connection, db } = emptyFile()
  await migrate(connection, db, migrations.slice(0, 1))
  expect(schemaOf(connection)).toBe(10)
  expect(tables(connection)).toEqual([
    'caliber',
    'sqlite_sequence',
    'reading',
    'jewel',
    'lubrication',
    'depth',
    'part',
    'strip_step',
    'source',
    'draft',
    'revision',
    'revision_change',
    'kept_section',
    'note',
    'alias',
    'search_text',
    'search_words',
    'spelling',
  ])
})

test('a migration that fails halfway leaves nothing, not even its number', async () => {
  const { connection, db } = emptyFile()
  const failing = {
    number: newestSchema + 10,
    name: 'failing',
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

test('running again changes nothing', async () => {
  const { connection, db } = emptyFile()
  await migrate(connection, db)
  const before = connection.pragma('schema_version', { simple: true })
  await migrate(connection, db)
  expect(connection.pragma('schema_version', { simple: true })).toBe(before)
})
