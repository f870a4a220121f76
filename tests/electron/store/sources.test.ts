import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Source } from '../../../core/exchange/library-file.ts'
import { removeCaliber } from '../../../electron/store/calibers.ts'
import { removeGauge, saveGauge } from '../../../electron/store/gauges.ts'
import { listRevisions, nextUndo, redoLast, undoLast } from '../../../electron/store/revisions.ts'
import { listSources, removeSource, saveSource, usesOfSource } from '../../../electron/store/sources.ts'
import { fullEntry } from '../../support/full-entry.ts'
import { gaugeTableOf } from '../../support/gauge-table-of.ts'
import { entryOf, save, temporaryLibrary } from '../../support/temporary-library.ts'

test('a source keeps keys of a newer version and counts what rests on it, readings and lines of lists', async () => {
  const library = await temporaryLibrary()
  await saveSource(library, { key: 'hb1', title: 'Handbook', year: 1931, unitsAsPrinted: 'ligne', later: 'x' })
  const id = await save(library, fullEntry())
  const source = { key: 'hb1', title: 'Handbook', year: 1931, unitsAsPrinted: 'ligne', later: 'x' }
  expect(await listSources(library)).toEqual([{ ...source, values: 2 }])
  await removeCaliber(library, id)
  expect(await listSources(library)).toEqual([{ ...source, values: 0 }])
})

test('the shelf goes by title', async () => {
  const library = await temporaryLibrary()
  for (const [key, title] of [
    ['c', 'Workshop notes'],
    ['b', 'Handbook'],
    ['a', 'Handbook'],
  ] as const)
    await saveSource(library, { key, title })
  expect((await listSources(library)).map(({ key }) => key)).toEqual(['a', 'b', 'c'])
})

test('the source saved last under a key is the one that stands, exactly as it was saved', async () => {
  const library = await temporaryLibrary()
  const words = fc.string({ maxLength: 12 })
  const source = fc
    .record(
      {
        key: fc.constantFrom('a', 'b', 'hb 1'),
        title: words,
        author: words,
        year: fc.integer({ min: 1700, max: 2100 }),
        edition: words,
        language: words,
        unitsAsPrinted: words,
        notes: words,
      },
      { requiredKeys: ['key', 'title'] },
    )
    .chain((known) =>
      fc
        .dictionary(fc.stringMatching(/^x[A-Z]$/), fc.jsonValue({ maxDepth: 1 }))
        .map((later): Source => ({ ...(JSON.parse(JSON.stringify(later)) as object), ...known })),
    )
  const last = new Map<string, Source>()
  await fc.assert(
    fc.asyncProperty(source, async (saved) => {
      await saveSource(library, saved)
      last.set(saved.key, saved)
      const shelf = (await listSources(library)).map(({ values: _, ...each }) => [each.key, each] as const)
      expect(new Map(shelf)).toEqual(last)
    }),
    { numRuns: 50 },
  )
})

test('entry, change and removal of a source are steps that undo and redo walk through', async () => {
  const library = await temporaryLibrary()
  const shelf = async () => (await listSources(library)).map(({ title }) => title)
  await saveSource(library, { key: 'hb', title: 'Handbook' })
  await saveSource(library, { key: 'hb', title: 'Handbook, second printing' })
  await removeSource(library, 'hb')
  expect(await shelf()).toEqual([])
  expect(await undoLast(library)).toBe('removal of source Handbook, second printing')
  expect(await shelf()).toEqual(['Handbook, second printing'])
  expect(await undoLast(library)).toBe('change of source Handbook, second printing')
  expect(await shelf()).toEqual(['Handbook'])
  expect(await undoLast(library)).toBe('entry of source Handbook')
  expect(await shelf()).toEqual([])
  await redoLast(library)
  expect(await shelf()).toEqual(['Handbook'])
})

test('a source saved as it already stands is no step', async () => {
  const library = await temporaryLibrary()
  await saveSource(library, { key: 'hb', title: 'Handbook', year: 1931 })
  await saveSource(library, { year: 1931, title: 'Handbook', key: 'hb' })
  expect(await listRevisions(library, 10)).toHaveLength(1)
})

test('a source on which something rests is not removed, and what rests on it is told by caliber and field', async () => {
  const library = await temporaryLibrary()
  await saveSource(library, { key: 'hb1', title: 'Handbook' })
  const full = await save(library, fullEntry())
  const other = await save(
    library,
    entryOf(
      'Aldervane',
      '9',
      {},
      { parts: [{ part: 'click', source: 'hb1' }], fields: { notes: [{ printed: 'x', source: 'hb1' }] } },
    ),
  )
  await expect(removeSource(library, 'hb1')).rejects.toMatchObject({
    failure: { code: 'source-in-use', details: { title: 'Handbook', values: 4 } },
  })
  expect(await listSources(library)).toHaveLength(1)
  expect(await nextUndo(library)).toBe('entry of Aldervane 9')
  expect(await usesOfSource(library, 'hb1', 10)).toEqual({
    total: 2,
    uses: [
      { caliberId: other, maker: 'Aldervane', designation: '9', keys: ['notes', 'parts'] },
      { caliberId: full, maker: 'Verrin', designation: '17-220', keys: ['springLengthMm', 'jewels'] },
    ],
  })
  expect((await usesOfSource(library, 'hb1', 1)).uses).toHaveLength(1)
  await removeCaliber(library, full)
  await removeCaliber(library, other)
  await removeSource(library, 'hb1')
  expect(await listSources(library)).toEqual([])
  await expect(removeSource(library, 'hb1')).rejects.toMatchObject({ failure: { code: 'not-found' } })
})

test('a source stays on the shelf while a gauge table is taken from it', async () => {
  const library = await temporaryLibrary()
  await saveSource(library, { key: 'hb', title: 'Handbook' })
  const table = gaugeTableOf('Harrow', { '2/0': 0.27 }, { source: 'hb' })
  const id = await saveGauge(library, null, table)
  expect((await listSources(library)).map(({ values }) => values)).toEqual([1])
  expect(await usesOfSource(library, 'hb', 9)).toEqual({ total: 0, uses: [], gauges: ['Harrow'] })
  await expect(removeSource(library, 'hb')).rejects.toMatchObject({
    failure: { code: 'source-in-use', details: { values: 1 } },
  })
  await removeGauge(library, id)
  expect(await usesOfSource(library, 'hb', 9)).toEqual({ total: 0, uses: [] })
  await removeSource(library, 'hb')
  expect(await listSources(library)).toEqual([])
})
