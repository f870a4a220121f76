import fc from 'fast-check'
import { expect, test } from 'vitest'
import { exportFile } from '../../../electron/service/export-file.ts'
import { readImport } from '../../../electron/service/read-import.ts'
import { keepSections, readKeptSections } from '../../../electron/store/kept-sections.ts'
import { arbitraryLibraryDocument } from '../../support/arbitrary-library.ts'
import { temporaryLibrary } from '../../support/temporary-library.ts'

test('sections without a page are kept, each line once', async () => {
  const library = await temporaryLibrary()
  const sections = { movements: [{ name: 'A1' }], others: { later: { a: 1 } } }
  await keepSections(library, sections)
  await keepSections(library, { ...sections, movements: [{ name: 'A1' }, { name: 'B2' }] })
  expect(await readKeptSections(library)).toEqual({ ...sections, movements: [{ name: 'A1' }, { name: 'B2' }] })
})

test('a section of a newer version takes the place of its namesake and leaves the others', async () => {
  const library = await temporaryLibrary()
  const none = { movements: [] }
  await keepSections(library, { ...none, others: { later: [1, 2], madeBy: 'one hand' } })
  await keepSections(library, { ...none, others: { later: [3] } })
  expect(await readKeptSections(library)).toEqual({ ...none, others: { later: [3], madeBy: 'one hand' } })
})

test('a library of which nothing was imported keeps nothing', async () => {
  expect(await readKeptSections(await temporaryLibrary())).toEqual({ movements: [], others: {} })
})

const eachOnce = (lines: readonly unknown[]): unknown[] =>
  [...new Set(lines.map((line) => JSON.stringify(line)))].map((line): unknown => JSON.parse(line))

test('whatever a file holds beside calibers and sources is in the file that is exported after its import', async () => {
  await fc.assert(
    fc.asyncProperty(arbitraryLibraryDocument, async (document) => {
      const library = await temporaryLibrary()
      const { sections } = readImport('in.json', JSON.stringify(document))
      await keepSections(library, sections)
      await keepSections(library, sections)
      const written = JSON.parse(await exportFile(library, undefined)) as Record<string, unknown>
      await library.close()
      const { sources: _, calibers: __, springs: ___, movements, ...others } = document
      expect(written).toEqual({
        ...others,
        sources: [],
        calibers: [],
        springs: [],
        movements: eachOnce(movements),
      })
    }),
    { numRuns: 12 },
  )
})
