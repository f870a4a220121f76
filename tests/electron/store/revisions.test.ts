import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { CaliberEntry } from '../../../core/exchange/library-file.ts'
import { readEntry } from '../../../core/record/read-entry.ts'
import { exportFile } from '../../../electron/service/export-file.ts'
import {
  countCalibers,
  findCaliber,
  readCaliber,
  removeCaliber,
  saveCalibers,
} from '../../../electron/store/calibers.ts'
import type { Library } from '../../../electron/store/library.ts'
import { listRevisions, nextRedo, nextUndo, redoLast, undoLast } from '../../../electron/store/revisions.ts'
import { fullEntry } from '../../support/full-entry.ts'
import { checkWordIndex, entryOf, save, temporaryLibrary } from '../../support/temporary-library.ts'

test('undo and redo walk through every change, also a removal, and give back the same id', async () => {
  const library = await temporaryLibrary()
  const id = await save(library, fullEntry())
  const changed = { ...fullEntry(), parts: [] }
  await save(library, changed, id)
  await removeCaliber(library, id)
  expect(await nextUndo(library)).toBe('removal of Verrin 17-220')
  expect(await undoLast(library)).toBe('removal of Verrin 17-220')
  expect(await readCaliber(library, id)).toEqual(changed)
  expect(await undoLast(library)).toBe('change of Verrin 17-220')
  expect(await readCaliber(library, id)).toEqual(fullEntry())
  expect(await undoLast(library)).toBe('entry of Verrin 17-220')
  expect(await countCalibers(library)).toBe(0)
  expect(await undoLast(library)).toBeNull()
  expect([await redoLast(library), await redoLast(library)]).toEqual([
    'entry of Verrin 17-220',
    'change of Verrin 17-220',
  ])
  expect(await readCaliber(library, id)).toEqual(changed)
  expect(await nextRedo(library)).toBe('removal of Verrin 17-220')
})

test('a new change after an undo ends the redo but keeps what was taken back to look at', async () => {
  const library = await temporaryLibrary()
  await save(library, entryOf('Verrin', '1'))
  await undoLast(library)
  await save(library, entryOf('Verrin', '2'))
  expect(await nextRedo(library)).toBeNull()
  expect(await redoLast(library)).toBeNull()
  const lines = await listRevisions(library, 10)
  expect(lines.map(({ action, takenBack }) => [action, takenBack])).toEqual([
    ['entry of Verrin 2', false],
    ['entry of Verrin 1', true],
  ])
})

test('a step in which one caliber takes the name that another gave up is taken back and made again', async () => {
  const library = await temporaryLibrary()
  const id = await save(library, entryOf('Verrin', '1'))
  const item = (entry: CaliberEntry, of: number | null) => ({
    id: of,
    entry,
    values: readEntry(entry).caliber,
    disagree: 0,
    doubtful: 0,
  })
  await saveCalibers(library, [item(entryOf('Verrin', '1 old'), id), item(entryOf('Verrin', '1'), null)], 'import')
  const after = await exportFile(library, undefined)
  expect(await undoLast(library)).toBe('import')
  expect(await readCaliber(library, id)).toEqual(entryOf('Verrin', '1'))
  expect(await countCalibers(library)).toBe(1)
  expect(await redoLast(library)).toBe('import')
  expect(await exportFile(library, undefined)).toBe(after)
})

/** One step of a hand at work: a caliber saved under one of a few names, removed, or a step taken back or made again. */
const step = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.record({
      what: fc.constant('save' as const),
      name: fc.constantFrom('1', '2', '3'),
      notes: fc.stringMatching(/^[a-z]{4,7}$/),
      diameterMm: fc.constantFrom("17'''", '23.30 mm', 'unreadable'),
    }),
  },
  {
    weight: 2,
    arbitrary: fc.record({ what: fc.constant('remove' as const), name: fc.constantFrom('1', '2', '3') }),
  },
  { weight: 1, arbitrary: fc.constantFrom({ what: 'undo' } as const, { what: 'redo' } as const) },
)
type Step = typeof step extends fc.Arbitrary<infer S> ? S : never

const take = async (library: Library, step: Step): Promise<unknown> => {
  if (step.what === 'undo') return undoLast(library)
  if (step.what === 'redo') return redoLast(library)
  const id = await findCaliber(library, 'Verrin', step.name)
  if (step.what === 'remove') return id === null ? undefined : removeCaliber(library, id)
  const { notes, diameterMm } = step
  return save(library, entryOf('Verrin', step.name, { notes, diameterMm, alsoKnownAs: notes }), id)
}

test('undone to the beginning and redone to the end, any work goes back through every state it came by', async () => {
  const library = await temporaryLibrary()
  await fc.assert(
    fc.asyncProperty(fc.array(step, { maxLength: 10 }), async (steps) => {
      // Each state of the library by the exchange file, behind the steps that undo would take back to reach it.
      const states = [await exportFile(library, undefined)]
      const begun = (await listRevisions(library, 1))[0]?.id ?? 0
      let at = 0
      for (const each of steps) {
        if (each.what === 'undo' && at === 0) continue
        const last = (await listRevisions(library, 1))[0]?.id
        const moved = await take(library, each)
        if (each.what === 'undo') at -= 1
        else if (each.what === 'redo') at += moved === null ? 0 : 1
        else if ((await listRevisions(library, 1))[0]?.id !== last) {
          at += 1
          states.length = at
          states.push(await exportFile(library, undefined))
        }
        expect(await exportFile(library, undefined)).toBe(states[at])
      }
      for (; at > 0; at -= 1) {
        expect(await undoLast(library)).not.toBeNull()
        expect(await exportFile(library, undefined)).toBe(states[at - 1])
      }
      checkWordIndex(library)
      for (const state of states.slice(1)) {
        expect(await redoLast(library)).not.toBeNull()
        expect(await exportFile(library, undefined)).toBe(state)
      }
      expect(await nextRedo(library)).toBeNull()
      checkWordIndex(library)
      expect((await listRevisions(library, 100)).filter(({ id }) => id > begun).length).toBeGreaterThanOrEqual(
        states.length - 1,
      )
    }),
    { numRuns: 20 },
  )
})
