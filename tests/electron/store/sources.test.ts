import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Source } from '../../../core/exchange/library-file.ts'
import { removeCaliber } from '../../../electron/store/calibers.ts'
import { listSources, saveSource } from '../../../electron/store/sources.ts'
import { fullEntry } from '../../support/full-entry.ts'
import { save, temporaryLibrary } from '../../support/temporary-library.ts'

test('a source keeps keys of a newer version and counts its readings', async () => {
  const library = await temporaryLibrary()
  await saveSource(library, { key: 'hb1', title: 'Handbook', year: 1931, unitsAsPrinted: 'ligne', later: 'x' })
  const id = await save(library, fullEntry())
  const source = { key: 'hb1', title: 'Handbook', year: 1931, unitsAsPrinted: 'ligne', later: 'x' }
  expect(await listSources(library)).toEqual([{ ...source, values: 1 }])
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
