import { expect, test } from 'vitest'
import { eraseSource, storedSource, writeSource } from '../../../electron/store/write-source.ts'
import { temporaryLibrary } from '../../support/temporary-library.ts'

test('a source is read as it was written, with what a newer version adds, and is gone once erased', async () => {
  const library = await temporaryLibrary()
  const source = { key: 'hb', title: 'Handbook', author: 'A. Quellin', year: 1931, notes: 'worn', columns: ['a', 'b'] }
  writeSource(library, source)
  expect(storedSource(library, 'hb')).toEqual(source)
  writeSource(library, { key: 'hb', title: 'Handbook' })
  expect(storedSource(library, 'hb')).toEqual({ key: 'hb', title: 'Handbook' })
  eraseSource(library, 'hb')
  expect(storedSource(library, 'hb')).toBeNull()
})
