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

test.each([10, 20, 30])(
  '0040-stock adds springs and orders to a library of schema %i, and takes up the springs it kept',
  async (from) => {
    const { connection, db } = emptyFile()
    await migrate(
      connection,
      db,
      migrations.filter(({ number }) => number <= from),
    )
    const bad = { supplierRef: 'S2', heightMm: 'tall' }
    const kept = [
      { supplierRef: 'S1', heightMm: 1.5, thicknessMm: 0.1, lengthMm: 360, end: 'tongue', inStock: 3, coating: 'blue' },
      bad,
      { supplierRef: 'S3', tray: 'Drawer 3', heightMm: 1, thicknessMm: 0.1 },
    ]
    const keep = connection.prepare('insert into kept_section (name, content) values (?, ?)')
    keep.run('springs', JSON.stringify(kept))
    keep.run('movements', '[{"name":"A1"}]')
    await migrate(
      connection,
      db,
      migrations.filter(({ number }) => number <= 40),
    )
    expect(schemaOf(connection)).toBe(40)
    expect(connection.prepare('select * from spring').all()).toMatchObject([
      {
        tray: '',
        supplier_ref: 'S1',
        height_mm: 1.5,
        length_mm: 360,
        spring_end: 'tongue',
        in_stock: 3,
        extra: '{"coating":"blue"}',
      },
      { tray: 'Drawer 3', supplier_ref: 'S3', height_mm: 1, length_mm: null, in_stock: null, extra: '{}' },
    ])
    expect(connection.prepare('select * from kept_section order by name').all()).toEqual([
      { name: 'movements', content: '[{"name":"A1"}]' },
      { name: 'springsAsWritten', content: JSON.stringify([bad]) },
    ])
  },
)

test('0040-stock leaves nothing behind where all kept springs could be taken up', async () => {
  const { connection, db } = emptyFile()
  await migrate(connection, db, migrations.slice(0, 3))
  const spring = [{ supplierRef: 'S1', heightMm: 1.5, thicknessMm: 0.1 }]
  connection.prepare("insert into kept_section (name, content) values ('springs', ?)").run(JSON.stringify(spring))
  await migrate(connection, db, migrations.slice(0, 4))
  expect(connection.prepare('select * from kept_section').all()).toEqual([])
  expect(connection.prepare('select count(*) from spring').pluck().get()).toBe(1)
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

test.each([10, 20, 30, 40])(
  '0050-gauge-tables adds the tables of gauges to a library of schema %i, and takes up those it kept',
  async (from) => {
    const { connection, db } = emptyFile()
    await migrate(
      connection,
      db,
      migrations.filter(({ number }) => number <= from),
    )
    const row = { number: '2/0', mm: 0.27 }
    const good = { name: 'Harrow', measures: 'thickness', rows: [row, { number: '14', mm: 0.12 }], later: { kept: 1 } }
    const high = { name: 'Harrow', measures: 'height', page: '9', rows: [{ number: '14', mm: 1.5 }] }
    const bad = [
      { ...good, name: 'harrow ' },
      { ...good, name: 'Thick', rows: [{ number: '14', mm: 12 }] },
      { ...good, name: 'Twice', rows: [row, row] },
      { ...good, name: 'Empty', rows: [] },
      { ...good, name: 'Words', rows: [{ number: 'fine', mm: 0.1 }] },
      'Harrow',
      7,
      null,
    ]
    const keep = connection.prepare('insert into kept_section (name, content) values (?, ?)')
    keep.run('gauges', JSON.stringify([good, high, ...bad]))
    keep.run('movements', '[{"name":"A1"}]')
    await migrate(
      connection,
      db,
      migrations.filter(({ number }) => number <= 50),
    )
    expect(schemaOf(connection)).toBe(50)
    const kept = (text: unknown): unknown => JSON.parse(String(text))
    expect(connection.prepare('select line from gauge order by id').pluck().all().map(kept)).toEqual([good, high])
    expect(connection.prepare('select name from kept_section order by name').pluck().all()).toEqual([
      'gaugesAsWritten',
      'movements',
    ])
    const left = connection.prepare("select content from kept_section where name = 'gaugesAsWritten'").pluck().get()
    expect(kept(left)).toEqual(bad)
  },
)

test('0050-gauge-tables keeps what revisions remember of springs and orders, and leaves a section of another form', async () => {
  const { connection, db } = emptyFile()
  await migrate(
    connection,
    db,
    migrations.filter(({ number }) => number <= 40),
  )
  connection.exec(`insert into revision (id, at, action, taken_back, left_behind) values (1, '2031', 'entry', 0, 0);
    insert into stock_change (revision_id, position, kind, record_id, after) values (1, 0, 'spring', 7, '{}'), (1, 1, 'order', 3, '{}');
    insert into kept_section (name, content) values ('gauges', '{"later":1}')`)
  const before = connection.prepare('select * from stock_change').all()
  await migrate(
    connection,
    db,
    migrations.filter(({ number }) => number <= 50),
  )
  expect(connection.prepare('select * from stock_change').all()).toEqual(before)
  expect(connection.prepare('select * from kept_section').all()).toEqual([
    { name: 'gaugesAsWritten', content: '{"later":1}' },
  ])
  connection.exec('delete from revision')
  expect(connection.prepare('select count(*) from stock_change').pluck().get()).toBe(0)
})
