import { expect, test } from 'vitest'
import { readNote, writeNote } from '../../../electron/store/notes.ts'
import { nextUndo } from '../../../electron/store/revisions.ts'
import { temporaryLibrary } from '../../support/temporary-library.ts'

test('a note says what was written last, and is no step to be taken back', async () => {
  const library = await temporaryLibrary()
  expect(await readNote(library, 'counted-by')).toBeNull()
  writeNote(library, 'counted-by', 'first')
  writeNote(library, 'counted-by', 'second')
  expect(await readNote(library, 'counted-by')).toBe('second')
  expect(await readNote(library, 'last-backup')).toBeNull()
  expect(await nextUndo(library)).toBeNull()
})
