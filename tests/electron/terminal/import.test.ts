import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { beforeEach, expect, test } from 'vitest'
import {
  answered,
  fileOf,
  goodTrain,
  libraryFile,
  newFolder,
  refused,
  runCaptured,
  unreadable,
  wrongTrain,
} from './run-captured.ts'

let library: string
beforeEach(() => {
  library = join(newFolder(), 'library.sqlite')
})

test('what came in is counted, and the second time it is unchanged', async () => {
  const file = fileOf(libraryFile(goodTrain, wrongTrain))
  expect(await runCaptured('import', file, '--library', library)).toEqual({
    status: 0,
    out: '2 calibers added.\n',
    err: '',
  })
  expect(await answered('import', file, '--library', library)).toEqual({
    status: 0,
    document: { added: 0, updated: 0, unchanged: 2, refused: [], kept: [] },
  })
  const changed = fileOf(libraryFile({ ...wrongTrain, fields: goodTrain.fields }, { ...goodTrain, designation: '18' }))
  expect((await answered('import', changed, '--library', library)).document).toMatchObject({ added: 1, updated: 1 })
})

test('a dry run counts and begins no library', async () => {
  const file = fileOf(libraryFile(goodTrain, wrongTrain))
  expect(await answered('import', file, '--library', library, '--dry-run')).toMatchObject({
    status: 0,
    document: { added: 2 },
  })
  expect(existsSync(library)).toBe(false)
})

test('a table is brought in by its name', async () => {
  const table = fileOf('maker,designation\nVerrin,18-1\n', 'table.csv')
  expect((await runCaptured('import', table, '--library', library)).out).toBe('1 caliber added.\n')
})

test('where nothing can be used the sentence names file, path and field, and no library is begun', async () => {
  const nothing = await runCaptured('import', fileOf(libraryFile(unreadable)), '--library', library, '--json')
  expect(nothing.status).toBe(2)
  expect(nothing.err).toMatch(/^[^\n]*calibers\.json, calibers\[0\]\.fields\.thirdWheel: Third wheel[^\n]*\n$/)
  expect(JSON.parse(nothing.out)).toMatchObject({ added: 0, refused: [{ path: 'calibers[0].fields.thirdWheel' }] })
  const table = fileOf('maker,designation,thirdWheel\nVerrin,18-1,many\n', 'table.csv')
  const row = await runCaptured('import', table, '--library', library)
  expect(row.status).toBe(2)
  expect(row.err).toMatch(/^[^\n]*table\.csv, row 2, thirdWheel: Third wheel[^\n]*\n$/)
  expect(await refused('import', fileOf('{', 'broken.json'), '--library', library, '--json')).toContain('broken.json')
  expect(existsSync(library)).toBe(false)
})

test('a caliber that cannot be read is left out whole and the rest comes in, with status 1', async () => {
  const file = fileOf(libraryFile(goodTrain, unreadable))
  const some = await runCaptured('import', file, '--library', library, '--json')
  expect(some.status).toBe(1)
  expect(some.err).toMatch(/^[^\n]*calibers\[1\]\.fields\.thirdWheel[^\n]*\n$/)
  expect(JSON.parse(some.out)).toMatchObject({
    added: 1,
    refused: [{ path: 'calibers[1].fields.thirdWheel', reason: expect.stringContaining('many') }],
  })
  const { document } = await answered<{ calibers: unknown[] }>('prove', '--library', library)
  expect(document.calibers).toHaveLength(1)
})

test('one file is named, and a library is one', async () => {
  expect(await refused('import', '--library', library)).toContain('Name one file')
  const foreign = fileOf('this is no library, only a text of some length', 'foreign.sqlite')
  expect(await refused('import', fileOf(libraryFile(goodTrain)), '--library', foreign)).toContain(
    'not a Lignebook library',
  )
})

test('a quotation mark that is never closed refuses the table, where it would take in the rows after it', async () => {
  const rows = ['maker,designation,third wheel', 'Verrin,18-1,75', 'Verrin,"18-2,75', 'Verrin,18-3,75', '']
  const table = fileOf(rows.join('\n'), 'table.csv')
  expect(await refused('import', table, '--library', library, '--json')).toMatch(
    /table\.csv cannot be read, at row 3: a quotation mark /,
  )
  expect(existsSync(library)).toBe(false)
  const sizes = ['maker,designation,diameter', "Verrin,18-1,17'''", 'Verrin,18-2,"0.71 """', 'Verrin,18-3,0.71"', '']
  const sound = fileOf(sizes.join('\n'), 'table.csv')
  expect((await answered('import', sound, '--library', library)).document).toMatchObject({ added: 3, refused: [] })
})

test('what is refused is one sentence, and a caliber that stands twice is told where', async () => {
  const { status, err } = await runCaptured('import', fileOf(libraryFile(goodTrain, goodTrain)), '--library', library)
  expect(status).toBe(1)
  expect(err).toMatch(/calibers\.json, calibers\[1\]: Verrin 17-220 stands in the file twice; give [^.]+\.\n$/)
  const nameless = fileOf('maker,designation\nVerrin,\n', 'table.csv')
  expect((await runCaptured('import', nameless, '--library', library)).err).toMatch(
    /row 2: the designation is missing; fill it in\.\n$/,
  )
})
