import fc from 'fast-check'
import { expect, test } from 'vitest'
import { fileCaliberSchema } from '../../../core/exchange/library-file.ts'
import { openCaliber } from '../../../core/record/entry.ts'
import { readEntry } from '../../../core/record/read-entry.ts'
import { type Library, write } from '../../../electron/store/library.ts'
import { eraseCaliber, idOfName, storedEntry, writeCaliber } from '../../../electron/store/write-caliber.ts'
import { arbitraryFileCaliber } from '../../support/arbitrary-library.ts'
import { fullEntry } from '../../support/full-entry.ts'
import { checkWordIndex, entryOf, save, temporaryLibrary } from '../../support/temporary-library.ts'

/** How many rows each table has that belongs to a caliber. */
const rowsOf = ({ connection }: Library, id: number): Record<string, number> => {
  const tables = connection
    .prepare(
      `select t.name from pragma_table_list t, pragma_table_info(t.name) c
       where t.type = 'table' and c.name = 'caliber_id' and t.name not in ('draft', 'revision_change')`,
    )
    .pluck()
    .all() as string[]
  return Object.fromEntries(
    tables.map((table) => [
      table,
      Number(connection.prepare(`select count(*) from ${table} where caliber_id = ?`).pluck().get(id)),
    ]),
  )
}

test('an entry comes back exactly as it was saved, with what this version does not know', async () => {
  const library = await temporaryLibrary()
  const id = await save(library, fullEntry())
  expect(storedEntry(library, id)).toEqual(fullEntry())
  expect(storedEntry(library, id + 1)).toBeNull()
})

test('any caliber of a file comes back as it was opened, in place of the one before it', async () => {
  const library = await temporaryLibrary()
  let id: number | null = null
  await fc.assert(
    fc.asyncProperty(arbitraryFileCaliber, async (document) => {
      const entry = openCaliber(fileCaliberSchema.parse(document))
      id = await save(library, entry, id)
      // A field without a reading says nothing, and nothing is stored of it.
      const fields = Object.fromEntries(Object.entries(entry.fields).filter(([, readings]) => readings.length > 0))
      expect(storedEntry(library, id)).toEqual({ ...entry, fields })
      expect(Object.keys(storedEntry(library, id)?.fields ?? {})).toEqual(Object.keys(fields))
    }),
    { numRuns: 50 },
  )
  checkWordIndex(library)
})

test('a caliber that is erased leaves no row in any table', async () => {
  const library = await temporaryLibrary()
  const id = await save(library, { ...fullEntry(), fields: { alsoKnownAs: [{ printed: 'Lune' }] } })
  expect(rowsOf(library, id)).toMatchObject({
    reading: 1,
    jewel: 1,
    depth: 1,
    part: 1,
    strip_step: 1,
    alias: 1,
    overrule: 2,
  })
  write(library, () => eraseCaliber(library, id))
  expect(Object.values(rowsOf(library, id)).every((count) => count === 0)).toBe(true)
  checkWordIndex(library)
})

test('the id of a caliber that was removed is never given to another, and is there for its return', async () => {
  const library = await temporaryLibrary()
  const id = await save(library, entryOf('Verrin', '1'))
  write(library, () => eraseCaliber(library, id))
  const next = await save(library, entryOf('Verrin', '2'))
  expect(next).toBeGreaterThan(id)
  const entry = entryOf('Verrin', '1')
  const caliber = { entry, values: readEntry(entry).caliber, disagree: 0, doubtful: 0 }
  expect(write(library, () => writeCaliber(library, id, caliber, { index: true }))).toBe(id)
})

test('the first writing of a caliber is remembered when it is written again', async () => {
  const library = await temporaryLibrary()
  const id = await save(library, entryOf('Verrin', '1'))
  const times = () => library.connection.prepare('select created_at, changed_at from caliber').get() as object
  const first = times() as { created_at: string; changed_at: string }
  expect(first.changed_at).toBe(first.created_at)
  await save(library, entryOf('Verrin', '1 B'), id)
  expect(times()).toEqual({ created_at: first.created_at, changed_at: expect.any(String) })
  expect(times()).not.toEqual(first)
})

test('a name is known by its letters, whatever their case and marks, while points and strokes part names', async () => {
  const library = await temporaryLibrary()
  const id = await save(library, entryOf('Größ & Söhne', '8.5 B'))
  expect(idOfName(library, 'GROSS SOHNE', '8.5  b')).toBe(id)
  expect(idOfName(library, 'Größ & Söhne', '85 B')).toBeNull()
  await save(library, entryOf('Größ & Söhne', '85 B'))
})
