import { join } from 'node:path'
import Database from 'better-sqlite3'
import { Kysely, SqliteDialect } from 'kysely'
import { expect, onTestFinished, test } from 'vitest'
import { guardedConnection } from '../../electron/store/guarded-connection.ts'
import { migrate, schemaOf } from '../../electron/store/migrate.ts'
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

test('0020-attachments adds pictures and scans to a library as it first shipped, and leaves the rest', async () => {
  const { connection, db } = emptyFile()
  await migrate(connection, db, migrations.slice(0, 1))
  connection.exec("insert into source (key, title) values ('hb', 'Handbook')")
  const before = tables(connection)
  await migrate(connection, db, migrations.slice(0, 2))
  expect(schemaOf(connection)).toBe(20)
  expect(tables(connection).filter((name) => !before.includes(name))).toEqual([
    'attachment',
    'attachment_use',
    'attachment_change',
  ])
  expect(connection.prepare('select key, title from source').all()).toEqual([{ key: 'hb', title: 'Handbook' }])
})

test('every table of the newest schema is strict', async () => {
  const { connection, db } = emptyFile()
  await migrate(connection, db)
  const loose = connection
    .prepare("select name from pragma_table_list where schema = 'main' and type = 'table' and strict = 0")
    .pluck()
    .all()
  expect(loose.filter((name) => name !== 'sqlite_schema' && name !== 'sqlite_sequence')).toEqual([])
})
