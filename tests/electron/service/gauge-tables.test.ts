import fc from 'fast-check'
import { expect, test } from 'vitest'
import { gaugeTableOf } from '../../support/gauge-table-of.ts'
import { openTestLibrary } from './open-test-library.ts'

const table = { ...gaugeTableOf('Harrow', { '2/0': 0.27, 14: 0.12 }), later: { kept: 1 } }

test('a gauge table is saved, listed, told in the history, and removed', async () => {
  const library = await openTestLibrary()
  const { id } = await library.call('gauge.save', { id: null, table })
  expect(await library.call('gauges.list', {})).toEqual({ gauges: [{ id, ...table }] })
  const [revision] = (await library.call('history.list', {})).revisions
  const { changes } = await library.call('history.read', { id: revision?.id ?? 0 })
  expect(changes).toEqual([{ gaugeId: id, before: null, after: table }])
  const twin = library.call('gauge.save', { id: null, table: { ...table, name: 'harrow' } })
  await expect(twin).rejects.toMatchObject({ failure: { code: 'same-gauge' } })
  await library.call('gauge.remove', { id })
  expect((await library.call('gauges.list', {})).gauges).toEqual([])
  await library.close()
})

test('a table with a row that cannot stand is not saved', async () => {
  const library = await openTestLibrary()
  const twice = { ...table, rows: [...table.rows, { number: '14', mm: 0.13 }] }
  await expect(library.call('gauge.save', { id: null, table: twice })).rejects.toMatchObject({
    failure: { code: 'bad-input' },
  })
  expect((await library.call('gauges.list', {})).gauges).toEqual([])
  await library.close()
})

test('tables of a file come in whole, what cannot be read is named, and undo takes them back', async () => {
  const library = await openTestLibrary()
  const gauges = [
    table,
    { ...table, name: 'Thick', rows: [{ number: '1', mm: 12 }] },
    { ...table, name: 'harrow' },
    { ...table, measures: 'height', rows: [{ number: '14', mm: 1.5 }] },
  ]
  const text = JSON.stringify({ lignebook: 1, gauges })
  const counts = await library.call('exchange.import', { name: 'in.json', text })
  expect(counts.gauges).toEqual({ added: 2, updated: 0, unchanged: 0, removed: 0 })
  expect(counts.refused.map(({ path }) => path)).toEqual(['gauges[1].rows[0].mm', 'gauges[2].name'])
  expect(counts.refused[0]?.reason).toMatch(/^12 mm is outside what is possible/)
  expect(JSON.parse((await library.call('exchange.export', {})).text).gauges).toEqual([gauges[0], gauges[3]])
  await library.call('history.undo', {})
  expect(JSON.parse((await library.call('exchange.export', {})).text)).not.toHaveProperty('gauges')
  await library.close()
})

const row = fc.tuple(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 10, max: 300 }))
const rows = fc.uniqueArray(row, { minLength: 1, maxLength: 6, selector: ([number]) => number })
const tables = fc.uniqueArray(
  fc.tuple(fc.constantFrom('Harrow', 'Brandsma fine', 'Quarle'), fc.constantFrom('thickness', 'height'), rows),
  {
    maxLength: 5,
    selector: ([name, measures]) => `${name} ${measures}`,
  },
)

test('whatever tables a library has, export and import give the same library', async () => {
  await fc.assert(
    fc.asyncProperty(tables, async (made) => {
      const gauges = made.map(([name, measures, sizes]) =>
        gaugeTableOf(
          name,
          sizes.map(([number, mm]) => [String(number), mm / 100] as const),
          { measures },
        ),
      )
      const one = await openTestLibrary()
      for (const each of gauges) await one.call('gauge.save', { id: null, table: each })
      const { text } = await one.call('exchange.export', {})
      const other = await openTestLibrary()
      await other.call('exchange.import', { name: 'all.json', text })
      expect((await other.call('exchange.export', {})).text).toBe(text)
      await one.close()
      await other.close()
    }),
    { numRuns: 12 },
  )
})
