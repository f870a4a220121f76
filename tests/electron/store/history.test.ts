import fc from 'fast-check'
import { expect, test } from 'vitest'
import { readEntry } from '../../../core/record/read-entry.ts'
import { exportFile } from '../../../electron/service/export-file.ts'
import { addAttachment, listAttachments, removeAttachment } from '../../../electron/store/attachments.ts'
import { readCaliber, removeCaliber, saveCalibers } from '../../../electron/store/calibers.ts'
import { readRevision, takeBackRevision } from '../../../electron/store/history.ts'
import type { Library } from '../../../electron/store/library.ts'
import { listRevisions, nextUndo, undoLast } from '../../../electron/store/revisions.ts'
import { listSources, saveSource } from '../../../electron/store/sources.ts'
import { fullEntry } from '../../support/full-entry.ts'
import { checkWordIndex, entryOf, save, temporaryLibrary } from '../../support/temporary-library.ts'

const whole = { offset: 0, limit: 50 }

/** The revision last made. */
const last = async (library: Library): Promise<number> => (await listRevisions(library, 1))[0]?.id ?? 0

test('a revision tells what it changed, before and after, a stretch at a time', async () => {
  const library = await temporaryLibrary()
  const id = await save(library, entryOf('Verrin', '1', { thirdWheel: '57' }))
  await save(library, entryOf('Verrin', '1', { thirdWheel: '75' }), id)
  expect(await readRevision(library, await last(library), whole)).toMatchObject({
    action: 'change of Verrin 1',
    takenBack: false,
    total: 1,
    changes: [
      {
        caliberId: id,
        before: { entry: entryOf('Verrin', '1', { thirdWheel: '57' }) },
        after: { entry: entryOf('Verrin', '1', { thirdWheel: '75' }) },
      },
    ],
    later: [],
  })
  const items = ['2', '3', '4'].map((designation) => {
    const entry = entryOf('Verrin', designation)
    return { id: null, entry, values: readEntry(entry).caliber, disagree: 0, doubtful: 0 }
  })
  await saveCalibers(library, items, 'import of table.csv', [{ key: 'hb', title: 'Handbook' }])
  const second = await readRevision(library, await last(library), { offset: 1, limit: 2 })
  expect(second.total).toBe(4)
  expect(second.changes.map(({ after }) => after)).toMatchObject([
    { entry: items[0]?.entry },
    { entry: items[1]?.entry },
  ])
  await expect(readRevision(library, 9999, whole)).rejects.toMatchObject({ failure: { code: 'not-found' } })
})

test('a change in the middle is taken back as a step of its own, and that step too', async () => {
  const library = await temporaryLibrary()
  const id = await save(library, fullEntry())
  await removeCaliber(library, id)
  const removal = await last(library)
  await save(library, entryOf('Verrin', '2'))
  expect(await takeBackRevision(library, removal)).toBe('taking back of the removal of Verrin 17-220')
  expect(await readCaliber(library, id)).toEqual(fullEntry())
  expect(await nextUndo(library)).toBe('taking back of the removal of Verrin 17-220')
  await undoLast(library)
  expect(await readCaliber(library, id)).toBeNull()
  checkWordIndex(library)
})

test('a change on which a later one builds is left, and the later ones are named, latest first', async () => {
  const library = await temporaryLibrary()
  const id = await save(library, entryOf('Verrin', '1'))
  const entry = await last(library)
  await save(library, entryOf('Verrin', '1', { notes: 'a' }), id)
  await save(library, entryOf('Verrin', '2'))
  await save(library, entryOf('Verrin', '1b'), id)
  const before = await exportFile(library, undefined)
  await expect(takeBackRevision(library, entry)).rejects.toMatchObject({
    failure: {
      code: 'later-changes',
      details: { action: 'entry of Verrin 1', changes: ['change of Verrin 1b', 'change of Verrin 1'] },
    },
  })
  expect((await readRevision(library, entry, whole)).later.map(({ action }) => action)).toEqual([
    'change of Verrin 1b',
    'change of Verrin 1',
  ])
  expect(await exportFile(library, undefined)).toBe(before)
  await undoLast(library)
  await undoLast(library)
  await undoLast(library)
  // Nothing in force stands in the way any more.
  expect(await takeBackRevision(library, entry)).toBe('taking back of the entry of Verrin 1')
  expect(await readCaliber(library, id)).toBeNull()
})

test('what has been taken back cannot be taken back again', async () => {
  const library = await temporaryLibrary()
  await save(library, entryOf('Verrin', '1'))
  await undoLast(library)
  await expect(takeBackRevision(library, await last(library))).rejects.toMatchObject({
    failure: { code: 'already-taken-back', details: { action: 'entry of Verrin 1' } },
  })
})

test('the entry of a source is not taken back while values rest on it; other refusals change nothing either', async () => {
  const library = await temporaryLibrary()
  await saveSource(library, { key: 'hb1', title: 'Handbook' })
  const shelved = await last(library)
  const id = await save(library, fullEntry())
  await expect(takeBackRevision(library, shelved)).rejects.toMatchObject({ failure: { code: 'source-in-use' } })
  expect(await listSources(library)).toHaveLength(1)
  await removeCaliber(library, id)
  const removal = await last(library)
  expect(await takeBackRevision(library, shelved)).toBe('taking back of the entry of source Handbook')
  expect(await listSources(library)).toEqual([])
  await save(library, entryOf('Verrin', '17-220'))
  const before = await exportFile(library, undefined)
  await expect(takeBackRevision(library, removal)).rejects.toMatchObject({ failure: { code: 'same-name' } })
  expect(await exportFile(library, undefined)).toBe(before)
})

test('taking back any step that nothing later touches leaves the library as if it had not been taken', async () => {
  const library = await temporaryLibrary()
  const ids = new Map<string, number>()
  for (const designation of ['1', '2', '3', '4'])
    ids.set(designation, await save(library, entryOf('Verrin', designation)))
  const edit = fc.record({ designation: fc.constantFrom('1', '2', '3', '4'), notes: fc.stringMatching(/^[a-z]{3,6}$/) })
  await fc.assert(
    fc.asyncProperty(
      fc.uniqueArray(edit, { selector: ({ designation }) => designation, minLength: 2 }),
      fc.nat(),
      async (edits, pick) => {
        const at = pick % edits.length
        const before = new Map<number, unknown>()
        const steps: number[] = []
        for (const { designation, notes } of edits) {
          const id = ids.get(designation) ?? 0
          before.set(steps.length, await readCaliber(library, id))
          await save(library, entryOf('Verrin', designation, { notes }), id)
          steps.push(await last(library))
        }
        await takeBackRevision(library, steps[at] ?? 0)
        for (const [index, { designation, notes }] of edits.entries()) {
          const now = await readCaliber(library, ids.get(designation) ?? 0)
          expect(now).toEqual(index === at ? before.get(index) : entryOf('Verrin', designation, { notes }))
        }
      },
    ),
    { numRuns: 15 },
  )
  checkWordIndex(library)
})

test('that a scan was added or removed is taken back by itself too, unless it was moved since', async () => {
  const library = await temporaryLibrary()
  const caliberId = await save(library, entryOf('Verrin', '1'))
  const scan = {
    sha256: 'a'.repeat(64),
    type: 'image/png' as const,
    name: 'page 44.png',
    bytes: Buffer.from('made up'),
    extra: '{}',
  }
  const { useId } = await addAttachment(library, scan, { caliberId })
  const added = await last(library)
  await removeAttachment(library, useId)
  const removed = await last(library)
  await expect(takeBackRevision(library, added)).rejects.toMatchObject({ failure: { code: 'later-changes' } })
  await save(library, entryOf('Verrin', '2'))
  await takeBackRevision(library, removed)
  expect(await listAttachments(library, { caliberId })).toMatchObject([{ id: useId, name: 'page 44.png' }])
  await undoLast(library)
  expect(await listAttachments(library, { caliberId })).toEqual([])
})
