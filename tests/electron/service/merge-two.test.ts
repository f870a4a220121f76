import { afterEach, beforeEach, expect, test } from 'vitest'
import { entryOf } from '../../support/temporary-library.ts'
import { openTestLibrary, type TestLibrary } from './open-test-library.ts'

let library: TestLibrary
beforeEach(async () => {
  library = await openTestLibrary()
})
afterEach(() => library.close())

const enter = async (maker: string, designation: string, fields: Record<string, string> = {}) =>
  (await library.call('caliber.save', { caliberId: null, entry: entryOf(maker, designation, fields) })).id
const rows = async () => (await library.call('calibers.page', { offset: 0, limit: 100 })).rows
const exported = async () => (await library.call('exchange.export', {})).text

// 80/10 × 75/10 × 80/8 × 2 × 15 = 18 000; with 57 it is 13 680.
const train = { beatRateVph: '18 000', centreWheel: '80', thirdPinion: '10', fourthPinion: '10', fourthWheel: '80' }
const escapeWheel = { escapePinion: '8', escapeTeeth: '15' }

test('caliber.merge proves the merged caliber, keeps both readings and is taken back in one step', async () => {
  const keep = await enter('Verrin', '17-220', { ...train, thirdWheel: '57' })
  const from = await enter('Verrin', '17220 A', { ...escapeWheel, thirdWheel: '75' })
  const before = await exported()
  await library.call('caliber.merge', { keep, from })
  expect((await rows()).map(({ id, disagree }) => [id, disagree > 0])).toEqual([[keep, true]])
  const { entry } = await library.call('caliber.read', { id: keep })
  expect(entry.fields.thirdWheel).toEqual([{ printed: '57', chosen: true }, { printed: '75' }])
  expect((await library.call('library.status', {})).undo).toBe('merging of Verrin 17220 A into Verrin 17-220')
  await library.call('history.undo', {})
  expect(await exported()).toBe(before)
})

test('caliber.merge brings the overrules of the one that goes, counts by them, and undo gives both back', async () => {
  const overrule = (proof: string) => ({
    proof,
    severity: 'accepted' as const,
    reason: 'The book has it so.',
    of: 'disagrees' as const,
  })
  const one = entryOf('Verrin', '17-220', { ...train, ...escapeWheel, thirdWheel: '90' })
  const two = { ...entryOf('Verrin', '17220 A'), overrules: [overrule('beat-rate-follows-train')] }
  const { id: keep } = await library.call('caliber.save', { caliberId: null, entry: one })
  const { id: from } = await library.call('caliber.save', { caliberId: null, entry: two })
  const before = await exported()
  await library.call('caliber.merge', { keep, from })
  expect((await rows()).map(({ id, disagree }) => [id, disagree])).toEqual([[keep, 0]])
  expect((await library.call('caliber.read', { id: keep })).entry.overrules).toEqual(two.overrules)
  await library.call('history.undo', {})
  expect(await exported()).toBe(before)
})

test('caliber.merge refuses a caliber with itself, and one that is not there', async () => {
  const keep = await enter('Verrin', '17-220')
  await expect(library.call('caliber.merge', { keep, from: keep })).rejects.toMatchObject({
    failure: { code: 'bad-input' },
  })
  await expect(library.call('caliber.merge', { keep, from: 99 })).rejects.toMatchObject({
    failure: { code: 'not-found' },
  })
})

test('a variant of the one that goes is proved over the one that stays', async () => {
  const keep = await enter('Verrin', '17-220', { ...train, ...escapeWheel, thirdWheel: '75' })
  const from = await enter('Verrin', '17-220 alt', { ...train, ...escapeWheel, thirdWheel: '75' })
  const variant = await enter('Verrin', '17-221', { basedOn: '17-220 alt' })
  await library.call('caliber.merge', { keep, from })
  const { bases } = await library.call('caliber.bases', { caliberId: variant, maker: 'Verrin', basedOn: '17-220 alt' })
  expect(bases.map(({ designation }) => designation)).toEqual(['17-220'])
})

test('calibers.near answers what the library has by nearly that name, but for the one being changed', async () => {
  const id = await enter('Verrin', '17-220')
  const near = async (except?: number) =>
    (await library.call('calibers.near', { maker: 'Verin', designation: '17220', ...(except && { except }) })).near
  expect(await near()).toMatchObject([{ id, why: 'other-maker-spelling' }])
  expect(await near(id)).toEqual([])
})
