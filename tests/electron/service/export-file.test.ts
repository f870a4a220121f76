import { afterEach, beforeEach, expect, test } from 'vitest'
import { openTestLibrary, type TestLibrary } from './open-test-library.ts'

let library: TestLibrary
beforeEach(async () => {
  library = await openTestLibrary()
  await library.call('exchange.import', { name: 'in.json', text: JSON.stringify(file) })
})
afterEach(() => library.close())

const file = {
  lignebook: 1,
  madeBy: 'a newer version',
  sources: [
    { key: 'hb', title: 'Handbook' },
    { key: 'list', title: 'Price list' },
  ],
  calibers: [
    {
      maker: 'Verrin',
      designation: '17-220',
      fields: { thirdWheel: { printed: '75', source: 'hb' }, alarm: { h: 12 } },
    },
    { maker: 'Verrin', designation: '17-221', fields: { diameterMm: "17'''" } },
    {
      maker: 'Verrin',
      designation: '17-222',
      lubrication: [{ place: 'balance', lubricant: 'fine oil', source: 'list' }],
    },
  ],
  springs: [{ supplierRef: 'S1', heightMm: 1.5, thicknessMm: 0.1 }],
}
const exported = async (designation?: string) => {
  const { rows } = await library.call('calibers.page', { offset: 0, limit: 10 })
  const caliberId = rows.find((row) => row.designation === designation)?.id
  return JSON.parse((await library.call('exchange.export', { caliberId })).text)
}

test('the whole library is written with all its sources and what is kept beside it', async () => {
  const whole = await exported()
  expect(whole).toMatchObject({ lignebook: 1, madeBy: 'a newer version', springs: file.springs, sources: file.sources })
  expect(whole.calibers).toHaveLength(3)
  expect(whole.calibers[0].fields).toEqual(file.calibers[0]?.fields)
})

test('one caliber is written with the sources that it names, in its fields or its lists', async () => {
  for (const [designation, keys] of [
    ['17-220', ['hb']],
    ['17-221', []],
    ['17-222', ['list']],
  ] as const) {
    const one = await exported(designation)
    expect(one.calibers).toMatchObject([{ designation }])
    expect(one.sources.map(({ key }: { key: string }) => key)).toEqual(keys)
    expect(one.springs).toEqual([])
  }
})
