import { afterEach, beforeEach, expect, test } from 'vitest'
import type { CaliberEntry } from '../../../core/exchange/library-file.ts'
import { blankEntry } from '../../../core/record/entry.ts'
import { openTestLibrary, type TestLibrary } from './open-test-library.ts'

let library: TestLibrary
beforeEach(async () => {
  library = await openTestLibrary()
})
afterEach(() => library.close())

const entryOf = (designation: string, fields: Record<string, string> = {}, source?: string): CaliberEntry => ({
  ...blankEntry(),
  maker: 'Verrin',
  designation,
  fields: Object.fromEntries(
    Object.entries(fields).map(([key, printed]) => [key, [{ printed, ...(source && { source }), chosen: true }]]),
  ),
})
const added = (...entries: CaliberEntry[]) => entries.map((entry) => ({ caliberId: null, entry }))
const designations = async () =>
  (await library.call('calibers.page', { offset: 0, limit: 100 })).rows.map(({ designation }) => designation)
const action = 'paste of 2 calibers'

test('many calibers go in as one step, and one undo takes them back', async () => {
  const items = added(entryOf('17-220', { diameterMm: "17'''" }), entryOf('17-221'))
  const { ids } = await library.call('calibers.save-many', { items, action })
  expect(ids).toHaveLength(2)
  expect(await designations()).toEqual(['17-220', '17-221'])
  expect(await library.call('history.undo', {})).toEqual({ undone: action })
  expect(await designations()).toEqual([])
})

test('a dry run says what stands already and what stands in the table twice, and writes nothing', async () => {
  const { id } = await library.call('caliber.save', { caliberId: null, entry: entryOf('17-220') })
  const items = added(entryOf('9-2'), { ...entryOf('17-220'), maker: 'VERRIN' }, entryOf(' 9-2 '))
  expect(await library.call('calibers.save-many', { items, action, dryRun: true })).toEqual({
    ids: [],
    names: [
      { standing: null, twin: null },
      { standing: id, twin: null },
      { standing: null, twin: 0 },
    ],
  })
  expect(await designations()).toEqual(['17-220'])
})

test('a row with an id is laid over what is known, twice if it must, and undo gives the former back', async () => {
  const before = entryOf('17-220', { barrelTeeth: '78', thirdWheel: '75' }, 'a')
  const { id } = await library.call('caliber.save', { caliberId: null, entry: before })
  const items = [
    { caliberId: id, entry: entryOf('17-220', { barrelTeeth: '80' }, 'b') },
    { caliberId: id, entry: entryOf('17-220', { heightMm: '4.2' }, 'b') },
  ]
  expect((await library.call('calibers.save-many', { items, action })).ids).toEqual([id, id])
  const { entry } = await library.call('caliber.read', { id })
  expect(entry.fields).toEqual({
    barrelTeeth: [
      { printed: '80', source: 'b', chosen: true },
      { printed: '78', source: 'a' },
    ],
    thirdWheel: [{ printed: '75', source: 'a', chosen: true }],
    heightMm: [{ printed: '4.2', source: 'b', chosen: true }],
  })
  await library.call('history.undo', {})
  expect((await library.call('caliber.read', { id })).entry).toEqual(before)
})

test('one row that cannot go in keeps all of them out', async () => {
  await library.call('caliber.save', { caliberId: null, entry: entryOf('17-220') })
  const save = (...items: { caliberId: number | null; entry: CaliberEntry }[]) =>
    library.call('calibers.save-many', { items, action })
  await expect(save(...added(entryOf('1'), entryOf('17-220')))).rejects.toMatchObject({
    failure: { code: 'same-name' },
  })
  await expect(save(...added(entryOf('1'), entryOf('2', { thirdWheel: 'many' })))).rejects.toMatchObject({
    failure: { code: 'unreadable-values' },
  })
  await expect(save(...added(entryOf('1')), { caliberId: 99, entry: entryOf('3') })).rejects.toMatchObject({
    failure: { code: 'not-found' },
  })
  expect(await designations()).toEqual(['17-220'])
})
