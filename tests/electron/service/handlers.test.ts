import { existsSync } from 'node:fs'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { contract } from '../../../core/api/contract.ts'
import type { CaliberEntry } from '../../../core/exchange/library-file.ts'
import { blankEntry } from '../../../core/record/entry.ts'
import { createHandlers } from '../../../electron/service/handlers.ts'
import { openTestLibrary, type TestLibrary } from './open-test-library.ts'

let library: TestLibrary
beforeEach(async () => {
  library = await openTestLibrary()
})
afterEach(() => library.close())

// An 18 000 train: 80/10 × 75/10 × 80/8 × 2 × 15.
const train = {
  beatRateVph: '18 000',
  centreWheel: '80',
  thirdPinion: '10',
  thirdWheel: '75',
  fourthPinion: '10',
  fourthWheel: '80',
  escapePinion: '8',
  escapeTeeth: '15',
}
const entryOf = (designation: string, fields: Record<string, string> = train): CaliberEntry => ({
  ...blankEntry(),
  maker: 'Verrin',
  designation,
  fields: Object.fromEntries(Object.entries(fields).map(([key, printed]) => [key, [{ printed, chosen: true }]])),
})
const save = (entry: CaliberEntry, caliberId: number | null = null) =>
  library.call('caliber.save', { caliberId, entry })
const rows = async () => (await library.call('calibers.page', { offset: 0, limit: 100 })).rows

test('every call of the contract has its handler and no other is there', () => {
  const handlers = createHandlers({} as never, {} as never)
  expect(Object.keys(handlers).sort()).toEqual(Object.keys(contract).sort())
})

test('a caliber that is saved is proved, listed, read back as typed and found', async () => {
  const { id } = await save(entryOf('17-220'))
  await save(entryOf('17-221', { ...train, thirdWheel: '70' }))
  expect((await rows()).map(({ designation, disagree }) => [designation, disagree])).toEqual([
    ['17-220', 0],
    ['17-221', 1],
  ])
  expect((await library.call('caliber.read', { id })).entry).toEqual(entryOf('17-220'))
  const { hits } = await library.call('calibers.search', { words: '17220' })
  expect(hits.map(({ designation }) => designation)).toContain('17-220')
  expect(await library.call('library.status', {})).toMatchObject({ calibers: 2, disagreeing: 1 })
})

test('a value that cannot be read is not saved, and the sentence names the field', async () => {
  const saving = save(entryOf('17-220', { ...train, thirdWheel: 'many' }))
  await expect(saving).rejects.toMatchObject({
    failure: { code: 'unreadable-values', details: { problems: [expect.stringMatching(/^Third wheel: .*many/)] } },
  })
  expect(await rows()).toEqual([])
})

test('a second caliber of one name is refused', async () => {
  await save(entryOf('17-220'))
  await expect(save(entryOf('17-220'))).rejects.toMatchObject({ failure: { code: 'same-name' } })
})

test('what is done can be taken back and brought in again', async () => {
  const { id } = await save(entryOf('17-220'))
  await save(entryOf('17-220', { ...train, thirdWheel: '70' }), id)
  expect(await library.call('history.undo', {})).toEqual({ undone: 'change of Verrin 17-220' })
  expect((await library.call('caliber.read', { id })).entry.fields.thirdWheel?.[0]?.printed).toBe('75')
  expect((await rows())[0]?.disagree).toBe(0)
  expect(await library.call('history.redo', {})).toEqual({ redone: 'change of Verrin 17-220' })
  expect((await rows())[0]?.disagree).toBe(1)
  await library.call('caliber.remove', { id })
  await expect(library.call('caliber.read', { id })).rejects.toMatchObject({ failure: { code: 'not-found' } })
  expect((await library.call('history.list', {})).revisions.map(({ action }) => action)).toEqual([
    'removal of Verrin 17-220',
    'change of Verrin 17-220',
    'entry of Verrin 17-220',
  ])
})

test('a draft is kept as typed, readable or not, until it is let go', async () => {
  const entry = entryOf('17-220', { thirdWheel: 'seventy?' })
  await library.call('draft.keep', { caliberId: null, entry })
  expect(await library.call('draft.read', { caliberId: null })).toEqual({ draft: { caliberId: null, entry } })
  expect((await library.call('library.status', {})).draft).toEqual({ caliberId: null })
  await library.call('draft.discard', { caliberId: null })
  expect(await library.call('draft.read', { caliberId: null })).toEqual({ draft: null })
})

test('a backup stands beside the library, whole, and the status says when', async () => {
  await save(entryOf('17-220'))
  const backup = await library.call('library.back-up', {})
  expect(existsSync(backup.file)).toBe(true)
  expect(backup.calibers).toBe(1)
  expect(backup.sha256).toMatch(/^[0-9a-f]{64}$/)
  expect((await library.call('library.status', {})).lastBackup).toMatch(/^2026-01-01T/)
})

test('sources are put on the shelf', async () => {
  await library.call('source.save', { source: { key: 'hb', title: 'Handbook', year: 1931 } })
  const { sources } = await library.call('sources.list', {})
  expect(sources).toEqual([{ key: 'hb', title: 'Handbook', year: 1931, values: 0 }])
})

test('a source is removed once nothing rests on it, and what does is told', async () => {
  await library.call('source.save', { source: { key: 'hb', title: 'Handbook' } })
  const entry = { ...entryOf('17-220'), fields: { thirdWheel: [{ printed: '75', source: 'hb', chosen: true }] } }
  const { id } = await save(entry)
  await expect(library.call('source.remove', { key: 'hb' })).rejects.toMatchObject({
    failure: { code: 'source-in-use' },
  })
  expect(await library.call('source.uses', { key: 'hb' })).toEqual({
    total: 1,
    uses: [{ caliberId: id, maker: 'Verrin', designation: '17-220', keys: ['thirdWheel'] }],
  })
  await library.call('caliber.remove', { id })
  await library.call('source.remove', { key: 'hb' })
  expect((await library.call('sources.list', {})).sources).toEqual([])
})

test('the demo library comes in whole, as one step', async () => {
  const counts = await library.call('library.load-demo', {})
  expect(counts.refused).toEqual([])
  expect(counts.added).toBeGreaterThan(0)
  expect((await library.call('library.load-demo', {})).unchanged).toBe(counts.added)
  await library.call('history.undo', {})
  expect(await rows()).toEqual([])
})

test('an overrule is a step of its own, changes what is counted, and comes and goes with undo and redo', async () => {
  const wrong = entryOf('17-221', { ...train, thirdWheel: '90' })
  const { id } = await save(wrong)
  const overrule = {
    proof: 'beat-rate-follows-train',
    severity: 'accepted' as const,
    reason: 'The book has it so.',
    of: 'disagrees' as const,
  }
  const counts = async () => (await rows()).map(({ disagree, doubtful }) => [disagree, doubtful])
  const disagreeing = async () => (await library.call('library.status', {})).disagreeing
  expect([await counts(), await disagreeing()]).toEqual([[[1, 0]], 1])
  await save({ ...wrong, overrules: [overrule] }, id)
  expect([await counts(), await disagreeing()]).toEqual([[[0, 0]], 0])
  expect(await library.call('history.undo', {})).toEqual({
    undone: 'overrule of “Beat rate follows the train” at Verrin 17-221',
  })
  expect([(await library.call('caliber.read', { id })).entry, await counts()]).toEqual([wrong, [[1, 0]]])
  await library.call('history.redo', {})
  expect((await library.call('caliber.read', { id })).entry.overrules).toEqual([overrule])
  await save(wrong, id)
  expect((await library.call('history.list', {})).revisions[0]?.action).toBe(
    'taking back of the overrule of “Beat rate follows the train” at Verrin 17-221',
  )
  expect(await counts()).toEqual([[1, 0]])
})

test('an overrule without a reason is not saved', async () => {
  const overrules = [{ proof: 'jewels-add-up', severity: 'accepted' as const, reason: '  ', of: 'disagrees' as const }]
  await expect(save({ ...entryOf('17-220'), overrules })).rejects.toMatchObject({ failure: { code: 'bad-input' } })
  expect(await rows()).toEqual([])
})
