import { expect, test } from 'vitest'
import { removeCaliber } from '../../../electron/store/calibers.ts'
import { discardDraft, keepDraft, latestDraft, readDraft } from '../../../electron/store/draft.ts'
import { openLibrary } from '../../../electron/store/library.ts'
import { fullEntry } from '../../support/full-entry.ts'
import { entryOf, save, steadyClock, temporaryLibrary } from '../../support/temporary-library.ts'

test('each caliber has its own draft, and the new one has another, until it is saved or let go', async () => {
  const library = await temporaryLibrary()
  const id = await save(library, entryOf('Verrin', '1'))
  const half = { caliberId: null, entry: entryOf('Half', '') }
  const changed = { caliberId: id, entry: fullEntry() }
  expect([await readDraft(library, null), await readDraft(library, id)]).toEqual([null, null])
  await keepDraft(library, half)
  await keepDraft(library, changed)
  expect([await readDraft(library, null), await readDraft(library, id)]).toEqual([half, changed])
  await save(library, fullEntry(), id)
  expect([await readDraft(library, null), await readDraft(library, id)]).toEqual([half, null])
  await discardDraft(library, id)
  expect(await readDraft(library, null)).toEqual(half)
  await discardDraft(library, null)
  expect(await readDraft(library, null)).toBeNull()
})

test('the draft kept last is the one that is offered, whichever was begun first', async () => {
  const library = await temporaryLibrary()
  const id = await save(library, entryOf('Verrin', '1'))
  expect(await latestDraft(library)).toBeNull()
  await keepDraft(library, { caliberId: null, entry: entryOf('Half', '') })
  await keepDraft(library, { caliberId: id, entry: entryOf('Verrin', '1 B') })
  expect(await latestDraft(library)).toEqual({ caliberId: id })
  await keepDraft(library, { caliberId: null, entry: entryOf('Half', '2') })
  expect(await latestDraft(library)).toEqual({ caliberId: null })
  await save(library, entryOf('Half', '2'))
  expect(await latestDraft(library)).toEqual({ caliberId: id })
})

test('what is typed on takes the place of what was kept, and need be neither named nor readable', async () => {
  const library = await temporaryLibrary()
  await keepDraft(library, { caliberId: null, entry: entryOf('', '', { beatRateVph: 'not a number yet' }) })
  const entry = entryOf('', '', { beatRateVph: '18 0' })
  await keepDraft(library, { caliberId: null, entry })
  expect(await readDraft(library, null)).toEqual({ caliberId: null, entry })
})

test('a draft is there when the library is opened again', async () => {
  const library = await temporaryLibrary()
  await keepDraft(library, { caliberId: null, entry: fullEntry() })
  await library.close()
  const again = await openLibrary(library.file, { create: false, now: steadyClock() })
  expect(await readDraft(again, null)).toEqual({ caliberId: null, entry: fullEntry() })
  await again.close()
})

test('the draft of a caliber goes with it when it is removed', async () => {
  const library = await temporaryLibrary()
  const id = await save(library, entryOf('Verrin', '1'))
  await keepDraft(library, { caliberId: id, entry: entryOf('Verrin', '1 B') })
  await removeCaliber(library, id)
  expect(await readDraft(library, id)).toBeNull()
})
