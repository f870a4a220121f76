import { expect, test } from 'vitest'
import { blankEntry } from '../../../core/record/entry.ts'
import { recountLibrary } from '../../../electron/service/recount-library.ts'
import { pageOfCalibers } from '../../../electron/store/calibers.ts'
import { countProofsAgain } from '../../../electron/store/families.ts'
import type { Library } from '../../../electron/store/library.ts'
import { readNote } from '../../../electron/store/notes.ts'
import { nextUndo } from '../../../electron/store/revisions.ts'
import { save, temporaryLibrary } from '../../support/temporary-library.ts'

const wrongYears = (designation: string) => ({
  ...blankEntry(),
  maker: 'Verrin',
  designation,
  fields: { firstYear: [{ printed: '1950' }], lastYear: [{ printed: '1930' }] },
})
const counts = async (library: Library) =>
  (await pageOfCalibers(library, { offset: 0, limit: 500 })).map(({ disagree }) => disagree)

/** A library whose counts were made by a version that knew no such proof. */
const older = async (many: number) => {
  const library = await temporaryLibrary()
  for (let i = 0; i < many; i++) {
    const id = await save(library, wrongYears(`17-${i}`))
    await countProofsAgain(library, [{ id, disagree: 0, doubtful: 0 }])
  }
  return library
}

test('counts made by other proofs are made again, once, and are no step to be taken back', async () => {
  const library = await older(60)
  const last = await nextUndo(library)
  await recountLibrary(library, () => false)
  expect(new Set(await counts(library))).toEqual(new Set([1]))
  expect(await nextUndo(library)).toBe(last)
  await countProofsAgain(library, [{ id: 1, disagree: 9, doubtful: 0 }])
  await recountLibrary(library, () => false)
  expect(await counts(library)).toContain(9)
})

test('counting that is stopped begins anew the next time', async () => {
  const library = await older(60)
  let looks = 0
  await recountLibrary(library, () => ++looks > 2)
  expect(await readNote(library, 'counted-by')).toBeNull()
  expect(new Set(await counts(library))).toEqual(new Set([0, 1]))
  await recountLibrary(library, () => false)
  expect(new Set(await counts(library))).toEqual(new Set([1]))
})
