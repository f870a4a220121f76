import { afterEach, beforeEach, expect, test } from 'vitest'
import { readEntry } from '../../../core/record/read-entry.ts'
import { basesOf, lineOf, namesOfEntries, recountVariants, variantsOf } from '../../../electron/service/families.ts'
import { entryOf, save as store, temporaryLibrary } from '../../support/temporary-library.ts'
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
const base = entryOf('Verrin', '17-220', { ...train, alsoKnownAs: 'Sarelle 17' })
const variant = entryOf('Verrin', '17-221', { basedOn: '17-220' })
const further = entryOf('Verrin', '17-222', { basedOn: '17-221' })

const save = async (entry: typeof base, caliberId: number | null = null) =>
  (await library.call('caliber.save', { caliberId, entry })).id
const marks = async () =>
  (await library.call('calibers.page', { offset: 0, limit: 100 })).rows.map(
    ({ designation, disagree, doubtful }) => `${designation}: ${disagree} ${doubtful}`,
  )
const wrong = entryOf('Verrin', '17-220', { ...train, thirdWheel: '90' })

test('a variant is proved over its base, and over the base of that', async () => {
  await save(wrong)
  await save(variant)
  await save(further)
  expect(await marks()).toEqual(['17-220: 1 0', '17-221: 1 0', '17-222: 1 0'])
})

test('a variant that was entered before its base is proved again when that comes, and when it goes', async () => {
  await save(further)
  await save(variant)
  expect(await marks()).toEqual(['17-221: 0 0', '17-222: 0 0'])
  const id = await save(wrong)
  expect(await marks()).toEqual(['17-220: 1 0', '17-221: 1 0', '17-222: 1 0'])
  await library.call('caliber.remove', { id })
  expect(await marks()).toEqual(['17-221: 0 0', '17-222: 0 0'])
})

test('a change of the base, its undo and its redo reach the variants', async () => {
  const id = await save(base)
  await save(entryOf('Verrin', '17-221', { basedOn: '17-220', thirdWheel: '75' }))
  expect(await marks()).toEqual(['17-220: 0 0', '17-221: 0 0'])
  await save(wrong, id)
  expect(await marks()).toEqual(['17-220: 1 0', '17-221: 0 1'])
  await library.call('history.undo', {})
  expect(await marks()).toEqual(['17-220: 0 0', '17-221: 0 0'])
  await library.call('history.redo', {})
  expect(await marks()).toEqual(['17-220: 1 0', '17-221: 0 1'])
})

test('a base that is renamed lets its variants go', async () => {
  const id = await save(wrong)
  await save(variant)
  await save({ ...wrong, designation: '17-230' }, id)
  expect(await marks()).toEqual(['17-221: 0 0', '17-230: 1 0'])
})

test('what is imported is proved over its base, whichever comes first in the file', async () => {
  const file = { lignebook: 1, calibers: [variant, wrong] }
  await library.call('exchange.import', { name: 'book.json', text: JSON.stringify(file) })
  expect(await marks()).toEqual(['17-220: 1 0', '17-221: 1 0'])
})

test('the bases are told nearest first, by designation or other name, without going round in a ring', async () => {
  const told = async (basedOn: string, caliberId: number | null = null) =>
    (await library.call('caliber.bases', { caliberId, maker: 'Verrin', basedOn })).bases.map(
      ({ designation }) => designation,
    )
  const id = await save(entryOf('Verrin', '17-220', { alsoKnownAs: 'Sarelle 17', basedOn: '17-222' }))
  await save(variant)
  await save(further)
  expect(await told('sarelle  17')).toEqual(['17-220', '17-222', '17-221'])
  expect(await told('17-222', id)).toEqual(['17-222', '17-221'])
  expect(await told('none')).toEqual([])
  expect(await told('')).toEqual([])
})

test('the own maker goes before another', async () => {
  const stored = await temporaryLibrary()
  await store(stored, entryOf('Aubray', '17-220'))
  await store(stored, base)
  const bases = await basesOf(stored, readEntry(variant).caliber, null)
  expect(bases.map(({ maker }) => maker)).toEqual(['Verrin'])
})

test('only variants of the names that changed are counted again', async () => {
  expect([...namesOfEntries([base, null])]).toEqual(['17-220', 'sarelle 17'])
  const stored = await temporaryLibrary()
  await store(stored, wrong)
  await store(stored, variant)
  const counted = () => stored.prepare('select disagree from caliber order by id').pluck().all()
  await recountVariants(stored, new Set(['other']))
  expect(counted()).toEqual([0, 0])
  await recountVariants(stored, namesOfEntries([wrong]))
  expect(counted()).toEqual([0, 1])
})

test('the variants of a caliber are told with what stands between, and those of a namesake are not', async () => {
  const id = await save(base)
  const namesake = await save(entryOf('Hesselrode', '17-220', {}))
  await save(further)
  const near = await save(variant)
  await save(entryOf('Hesselrode', '17-225', { basedOn: '17-220' }))
  const { variants } = await library.call('caliber.variants', { id })
  expect(variants.map(({ entry, between }) => [entry.designation, between.map((one) => one.designation)])).toEqual([
    ['17-221', []],
    ['17-222', ['17-221']],
  ])
  const others = await library.call('caliber.variants', { id: namesake })
  expect(others.variants.map(({ entry }) => entry.designation)).toEqual(['17-225'])
  const { ids } = await library.call('caliber.bases', { caliberId: null, maker: 'Verrin', basedOn: '17-221' })
  expect(ids).toEqual([near, id])
})

test('calibers based on each other in a ring are variants of each other once', async () => {
  const stored = await temporaryLibrary()
  const one = await store(stored, entryOf('Verrin', '1', { basedOn: '2' }))
  const two = await store(stored, entryOf('Verrin', '2', { basedOn: '1' }))
  expect((await variantsOf(stored, one)).map(({ id }) => id)).toEqual([two])
  expect((await lineOf(stored, readEntry(variant).caliber, null)).map(({ id }) => id)).toEqual([])
})

test("a variant is not counted by its base's overrule", async () => {
  const overrules = [
    {
      proof: 'beat-rate-follows-train',
      severity: 'accepted' as const,
      reason: 'The book has it so.',
      of: 'disagrees' as const,
    },
  ]
  await save({ ...wrong, overrules })
  const id = await save(variant)
  expect(await marks()).toEqual(['17-220: 0 0', '17-221: 1 0'])
  await save({ ...variant, overrules }, id)
  expect(await marks()).toEqual(['17-220: 0 0', '17-221: 0 0'])
})
