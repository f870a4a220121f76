import { afterEach, beforeEach, expect, test } from 'vitest'
import { blankEntry } from '../../../core/record/entry.ts'
import { openTestLibrary, type TestLibrary } from './open-test-library.ts'

let library: TestLibrary
beforeEach(async () => {
  library = await openTestLibrary()
})
afterEach(() => library.close())

const verrin = (printed: string) => ({
  ...blankEntry(),
  maker: 'Verrin',
  designation: '1',
  fields: { thirdWheel: [{ printed, chosen: true }] },
})

test('a change crosses as the entries before and after, and no more', async () => {
  const { id } = await library.call('caliber.save', { caliberId: null, entry: verrin('57') })
  await library.call('caliber.save', { caliberId: id, entry: verrin('75') })
  await library.call('source.save', { source: { key: 'hb', title: 'Handbook' } })
  const { revisions } = await library.call('history.list', {})
  const [source, change, entry] = revisions
  expect((await library.call('history.read', { id: change?.id ?? 0 })).changes).toEqual([
    { caliberId: id, before: verrin('57'), after: verrin('75') },
  ])
  expect((await library.call('history.read', { id: source?.id ?? 0 })).changes).toEqual([
    { sourceKey: 'hb', before: null, after: { key: 'hb', title: 'Handbook' } },
  ])
  const first = await library.call('history.read', { id: entry?.id ?? 0 })
  expect(first.changes[0]).toMatchObject({ before: null })
  expect(first.later).toEqual([change])
  expect((await library.call('history.list', { before: change?.id ?? 0 })).revisions).toEqual([entry])
})

test('a change taken back from the history is a step, and says which', async () => {
  const { id } = await library.call('caliber.save', { caliberId: null, entry: verrin('57') })
  await library.call('caliber.save', { caliberId: id, entry: verrin('75') })
  await library.call('source.save', { source: { key: 'hb', title: 'Handbook' } })
  const { revisions } = await library.call('history.list', {})
  expect(await library.call('history.take-back', { id: revisions[1]?.id ?? 0 })).toEqual({
    done: 'taking back of the change of Verrin 1',
  })
  expect((await library.call('caliber.read', { id })).entry).toEqual(verrin('57'))
  expect((await library.call('library.status', {})).undo).toBe('taking back of the change of Verrin 1')
})
