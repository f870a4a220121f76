import { expect, test } from 'vitest'
import { mergeEntries } from '../../../core/record/merge-entries.ts'
import { readEntry } from '../../../core/record/read-entry.ts'
import { addAttachment, listAttachments } from '../../../electron/store/attachments.ts'
import { readCaliber } from '../../../electron/store/calibers.ts'
import { keepDraft } from '../../../electron/store/draft.ts'
import type { Library } from '../../../electron/store/library.ts'
import { mergeCalibers } from '../../../electron/store/merge.ts'
import { redoLast, undoLast } from '../../../electron/store/revisions.ts'
import { searchCalibers } from '../../../electron/store/search.ts'
import { checkWordIndex, entryOf, save, temporaryLibrary } from '../../support/temporary-library.ts'

const one = entryOf('Verrin', '17-220', { thirdWheel: '75' })
const two = entryOf('Verin', '17220', { thirdWheel: '57', barrelTeeth: '78' })
const { entry } = mergeEntries(one, two)
const merged = { entry, values: readEntry(entry).caliber, disagree: 0, doubtful: 0, action: 'merging of two' }

const pair = async () => {
  const library = await temporaryLibrary()
  return { library, keep: await save(library, one), from: await save(library, two) }
}
const picture = (digit: string) => ({
  sha256: digit.repeat(64),
  type: 'image/png' as const,
  name: `${digit}.png`,
  bytes: Buffer.from(digit),
  extra: '{}',
})
const pictures = async (library: Library, caliberId: number) =>
  (await listAttachments(library, { caliberId })).map(({ name }) => name)

test('the one stays with all that both said and is found under both names; the other is gone', async () => {
  const { library, keep, from } = await pair()
  await mergeCalibers(library, { keep, from }, merged)
  expect(await readCaliber(library, keep)).toEqual(entry)
  expect(await readCaliber(library, from)).toBeNull()
  expect((await searchCalibers(library, 'Verin 17220', 5)).map(({ id }) => id)).toEqual([keep])
  checkWordIndex(library)
})

test('one undo brings both back as they were, one redo merges them again', async () => {
  const { library, keep, from } = await pair()
  await mergeCalibers(library, { keep, from }, merged)
  expect(await undoLast(library)).toBe('merging of two')
  expect([await readCaliber(library, keep), await readCaliber(library, from)]).toEqual([one, two])
  expect(await redoLast(library)).toBe('merging of two')
  expect([await readCaliber(library, keep), await readCaliber(library, from)]).toEqual([entry, null])
  checkWordIndex(library)
})

test('pictures and scans go along, each once, and come back with the undo', async () => {
  const { library, keep, from } = await pair()
  await addAttachment(library, picture('a'), { caliberId: keep })
  await addAttachment(library, picture('a'), { caliberId: from })
  await addAttachment(library, picture('b'), { caliberId: from })
  await mergeCalibers(library, { keep, from }, merged)
  expect(await pictures(library, keep)).toEqual(['a.png', 'b.png'])
  await undoLast(library)
  expect([await pictures(library, keep), await pictures(library, from)]).toEqual([['a.png'], ['a.png', 'b.png']])
  await redoLast(library)
  expect([await pictures(library, keep), await pictures(library, from)]).toEqual([['a.png', 'b.png'], []])
})

test('a draft that is not saved stands in the way, and nothing is changed', async () => {
  const { library, keep, from } = await pair()
  await keepDraft(library, { caliberId: from, entry: two })
  await expect(mergeCalibers(library, { keep, from }, merged)).rejects.toMatchObject({
    failure: { code: 'draft-not-saved', details: { name: 'Verin 17220' } },
  })
  expect([await readCaliber(library, keep), await readCaliber(library, from)]).toEqual([one, two])
})

test('a caliber that is gone cannot be merged', async () => {
  const { library, keep } = await pair()
  await expect(mergeCalibers(library, { keep, from: 99 }, merged)).rejects.toMatchObject({
    failure: { code: 'not-found' },
  })
})
