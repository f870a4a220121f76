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

const overruled = (proof: string, more: object = {}) => ({
  proof,
  severity: 'accepted',
  reason: 'Two caps added.',
  of: 'disagrees',
  ...more,
})
const caliberWith = (connection: Database.Database, id: number, extra: object) =>
  connection
    .prepare(
      `insert into caliber (id, maker, designation, maker_folded, designation_folded, designation_compact,
         designation_order, extra, created_at, changed_at)
       values (?, 'Verrin', ?, 'verrin', ?, ?, ?, ?, '2031', '2031')`,
    )
    .run(id, `${id}`, `${id}`, `${id}`, `${id}`, JSON.stringify(extra))

test.each([10, 20])(
  '0030-overrules adds the overrules to a library of schema %i, and leaves the rest',
  async (from) => {
    const { connection, db } = emptyFile()
    await migrate(
      connection,
      db,
      migrations.filter(({ number }) => number <= from),
    )
    caliberWith(connection, 1, { later: { kept: 1 } })
    await migrate(
      connection,
      db,
      migrations.filter(({ number }) => number <= 30),
    )
    expect(schemaOf(connection)).toBe(30)
    expect(tables(connection)).toContain('overrule')
    expect(connection.prepare('select id, designation, extra from caliber').all()).toEqual([
      { id: 1, designation: '1', extra: '{"later":{"kept":1}}' },
    ])
    expect(connection.prepare('select count(*) from overrule').pluck().get()).toBe(0)
  },
)

test('0030-overrules takes up the overrules that an earlier version kept unread, and leaves what it cannot read as it was written', async () => {
  const { connection, db } = emptyFile()
  await migrate(
    connection,
    db,
    migrations.filter(({ number }) => number < 30),
  )
  const unread = [{ ...overruled('jewels-add-up'), reason: ' ' }]
  caliberWith(connection, 1, { later: 1, overrules: [overruled('jewels-add-up', { by: 'k' }), overruled('x')] })
  caliberWith(connection, 2, { overrules: unread })
  caliberWith(connection, 3, { overrules: 'all' })
  await migrate(
    connection,
    db,
    migrations.filter(({ number }) => number <= 30),
  )
  expect(connection.prepare('select * from overrule').all()).toEqual(
    ['jewels-add-up', 'x'].map((proof, position) => ({
      caliber_id: 1,
      position,
      proof,
      severity: 'accepted',
      reason: 'Two caps added.',
      outcome: 'disagrees',
      extra: position === 0 ? '{"by":"k"}' : '{}',
    })),
  )
  expect(
    connection
      .prepare('select extra from caliber order by id')
      .pluck()
      .all()
      .map((extra): unknown => JSON.parse(String(extra))),
  ).toEqual([{ later: 1 }, { overrulesAsWritten: unread }, { overrulesAsWritten: 'all' }])
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
