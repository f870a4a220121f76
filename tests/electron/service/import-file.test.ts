import { afterEach, beforeEach, expect, test } from 'vitest'
import { openTestLibrary, type TestLibrary } from './open-test-library.ts'

let library: TestLibrary
beforeEach(async () => {
  library = await openTestLibrary()
})
afterEach(() => library.close())

const file = {
  lignebook: 1,
  madeBy: 'a newer version',
  sources: [{ key: 'hb', title: 'Handbook', year: 1931, shelfMark: 'B 12' }],
  calibers: [
    {
      maker: 'Verrin',
      designation: '17-220',
      fields: {
        thirdWheel: { printed: '75', source: 'hb', page: '44' },
        springLengthMm: [{ printed: '480', source: 'hb', chosen: true }, { printed: '500' }],
        alsoKnownAs: ['220', 'Large Verrin'],
        colourOfPlate: 'gilt',
        alarm: { hours: 12, tones: ['high'] },
        sealed: true,
        retired: null,
      },
      jewels: [{ place: 'balance', kind: 'hole', count: 2 }],
      overrules: [
        { proof: 'sources-agree', severity: 'accepted', reason: 'Two springs.', of: 'doubtful', by: 'a newer version' },
        { proof: 'some-later-proof', severity: 'wrong', reason: 'Seen.', of: 'agrees' },
      ],
      rating: { stars: 3 },
    },
    { maker: 'Verrin', designation: '17-221', fields: { diameterMm: "17'''" } },
  ],
  springs: [{ supplierRef: 'S1', heightMm: 1.5, thicknessMm: 0.1, coating: 'blue' }],
  movements: [{ name: 'On the bench' }],
}
const bring = (content: unknown, dryRun = false, name = 'in.json') =>
  library.call('exchange.import', {
    name,
    text: typeof content === 'string' ? content : JSON.stringify(content),
    dryRun,
  })
const out = async () => JSON.parse((await library.call('exchange.export', {})).text)
const count = async () => (await library.call('library.status', {})).calibers

test('a dry run counts and writes nothing', async () => {
  expect(await bring(file, true)).toMatchObject({ added: 2, updated: 0, unchanged: 0, refused: [] })
  expect(await count()).toBe(0)
  expect((await library.call('sources.list', {})).sources).toEqual([])
})

test('importing again changes nothing, and what is exported comes in elsewhere as the same library', async () => {
  expect(await bring(file)).toMatchObject({
    added: 2,
    springs: { added: 1, updated: 0, unchanged: 0, removed: 0 },
    kept: ['movements', 'madeBy'],
  })
  expect(await bring(file)).toMatchObject({ added: 0, updated: 0, unchanged: 2 })
  const first = await out()
  expect(first).toMatchObject({ madeBy: 'a newer version', springs: file.springs, movements: file.movements })
  expect(first.sources).toEqual(file.sources)
  expect(first.calibers[0]).toMatchObject({
    rating: { stars: 3 },
    overrules: file.calibers[0]?.overrules,
    fields: {
      colourOfPlate: 'gilt',
      alarm: { hours: 12, tones: ['high'] },
      sealed: true,
      retired: null,
    },
  })
  const other = await openTestLibrary()
  await other.call('exchange.import', { name: 'again.json', text: JSON.stringify(first) })
  expect(JSON.parse((await other.call('exchange.export', {})).text)).toEqual(first)
  await other.close()
})

test('a caliber that cannot be read is left out whole, with its place and reason, and the others come in', async () => {
  const [good] = file.calibers
  const bad = { maker: 'Verrin', designation: 'bad', fields: { thirdWheel: 'many' } }
  const counts = await bring({ lignebook: 1, calibers: [good, bad, good] })
  expect(counts).toMatchObject({
    added: 1,
    refused: [
      { path: 'calibers[1].fields.thirdWheel', reason: expect.stringContaining('Third wheel') },
      { path: 'calibers[2]', reason: expect.stringContaining('twice') },
    ],
  })
  expect(await count()).toBe(1)
})

test('one undo takes a whole import back', async () => {
  await bring(file)
  expect(await library.call('history.undo', {})).toEqual({ undone: 'import of in.json' })
  expect(await count()).toBe(0)
  await library.call('history.redo', {})
  expect(await count()).toBe(2)
})

test('a file that is no library file is refused with its place', async () => {
  await expect(bring('{"lignebook":1,"calibers":[{"maker":"Verrin"}]}')).rejects.toMatchObject({
    failure: { code: 'file-not-readable', details: { file: 'in.json', where: 'calibers[0].designation' } },
  })
})

test('a table changes what it names and leaves the rest of a caliber as it was', async () => {
  await bring(file)
  const csv = 'maker;designation;thirdWheel\r\nVerrin;17-220;76\r\nVerrin;"17-222";many\r\n'
  const counts = await bring(csv, false, 'in.csv')
  expect(counts).toMatchObject({ added: 0, updated: 1, refused: [{ path: 'row 3, thirdWheel' }] })
  const [caliber] = (await out()).calibers
  expect(caliber.fields.thirdWheel).toBe('76')
  expect(caliber.jewels).toEqual(file.calibers[0]?.jewels)
  expect(caliber.fields.alsoKnownAs).toEqual(['220', 'Large Verrin'])
})

test('springs and the order list come with the file, what cannot be read is named, and undo takes all of it back', async () => {
  const orders = [{ kind: 'part', what: 'click', quantity: 1, state: 'open', at: '2031-05-01T08:00:00Z', later: 1 }]
  const springs = [
    { supplierRef: 'S1', heightMm: '15/10', thicknessMm: 0.1 },
    { supplierRef: 'S2', heightMm: 'tall', thicknessMm: 0.1 },
    { supplierRef: 'S1', heightMm: 1.2, thicknessMm: 0.1 },
  ]
  const counts = await bring({ lignebook: 1, springs, orders: [...orders, { what: 'no kind' }] })
  expect(counts).toMatchObject({
    springs: { added: 1, updated: 0, unchanged: 0, removed: 0 },
    orders: { added: 1, updated: 0, unchanged: 0, removed: 0 },
  })
  expect(counts.refused.map(({ path }) => path)).toEqual([
    'springs[1].heightMm',
    'springs[2].supplierRef',
    'orders[1].kind',
  ])
  expect(await out()).toMatchObject({ springs: [{ supplierRef: 'S1', heightMm: 1.5, thicknessMm: 0.1 }], orders })
  await library.call('history.undo', {})
  expect((await out()).springs).toEqual([])
  expect(await out()).not.toHaveProperty('orders')
})
