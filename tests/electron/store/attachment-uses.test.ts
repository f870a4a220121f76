import { expect, test } from 'vitest'
import { eraseUse, moveUses, noteUseChange, useById, writeUse } from '../../../electron/store/attachment-uses.ts'
import { keepBytes } from '../../../electron/store/attachments.ts'
import { beginRevision } from '../../../electron/store/revisions.ts'
import { smallPng } from '../../support/small-files.ts'
import { temporaryLibrary } from '../../support/temporary-library.ts'

const sha256 = 'a'.repeat(64)
const use = { id: null, sha256, caliberId: 3, source: null, page: '44', position: 0, note: 'plate', extra: '{"x":1}' }

test('a use comes back as it was written, and its id is never given again', async () => {
  const library = await temporaryLibrary()
  keepBytes(library, { sha256, type: 'image/png', name: 'plate.png', bytes: smallPng(), extra: '{}' })
  const written = writeUse(library, use)
  expect(useById(library, written.id)).toEqual({ ...use, id: written.id })
  eraseUse(library, written.id)
  expect(useById(library, written.id)).toBeNull()
  expect(writeUse(library, use).id).toBeGreaterThan(written.id)
})

test('a revision brings its uses to either side of it', async () => {
  const library = await temporaryLibrary()
  keepBytes(library, { sha256, type: 'image/png', name: 'plate.png', bytes: smallPng(), extra: '{}' })
  const revision = beginRevision(library, 'attachment')
  const before = writeUse(library, use)
  const after = writeUse(library, { ...before, caliberId: 4 })
  noteUseChange(library, revision, 0, { before: null, after: before })
  noteUseChange(library, revision, 1, { before, after })
  noteUseChange(library, revision, 2, { before: null, after: null })
  moveUses(library, revision, 'before')
  expect(useById(library, before.id)).toBeNull()
  moveUses(library, revision, 'after')
  expect(useById(library, before.id)).toEqual(after)
})
