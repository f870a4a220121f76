import { createHash } from 'node:crypto'
import { expect, test } from 'vitest'
import {
  addAttachment,
  keepBytes,
  listAttachments,
  readAttachment,
  removeAttachment,
  type StoredAttachment,
  usesAt,
} from '../../../electron/store/attachments.ts'
import { removeCaliber } from '../../../electron/store/calibers.ts'
import { type Library, rows } from '../../../electron/store/library.ts'
import { redoLast, undoLast } from '../../../electron/store/revisions.ts'
import { saveSource } from '../../../electron/store/sources.ts'
import { smallPng } from '../../support/small-files.ts'
import { entryOf, save, temporaryLibrary } from '../../support/temporary-library.ts'

const picture = (name: string, shade = 200): StoredAttachment => {
  const bytes = smallPng(shade)
  return { sha256: createHash('sha256').update(bytes).digest('hex'), type: 'image/png', name, bytes, extra: '{}' }
}
const names = async (library: Library, place: { caliberId?: number; source?: string }) =>
  (await listAttachments(library, place)).map(({ name }) => name)
const kept = (library: Library) => library.prepare('select count(*) from attachment').pluck().get()

test('a picture is kept at its caliber and read back byte for byte', async () => {
  const library = await temporaryLibrary()
  const caliberId = await save(library, entryOf('Verrin', '17-220'))
  const plate = picture('plate.png')
  expect(await addAttachment(library, plate, { caliberId })).toMatchObject({ kept: 'now' })
  const [line] = await listAttachments(library, { caliberId })
  expect(line).toMatchObject({ name: 'plate.png', size: plate.bytes.length, caliberId, source: null, position: 0 })
  expect(await readAttachment(library, plate.sha256)).toEqual(plate)
  expect(await readAttachment(library, '0'.repeat(64))).toBeNull()
})

test('the same bytes are kept once, and stand at one place once', async () => {
  const library = await temporaryLibrary()
  const caliberId = await save(library, entryOf('Verrin', '17-220'))
  await saveSource(library, { key: 'hb', title: 'Handbook' })
  const first = await addAttachment(library, picture('plate.png'), { caliberId })
  expect(await addAttachment(library, picture('again.png'), { caliberId })).toEqual({
    useId: first.useId,
    kept: 'before',
  })
  expect(await addAttachment(library, picture('again.png'), { source: 'hb', page: '44' })).toMatchObject({
    kept: 'before',
  })
  await addAttachment(library, picture('again.png'), { source: 'hb', page: '45' })
  expect(kept(library)).toBe(1)
  expect(await names(library, { caliberId, source: 'hb' })).toEqual(['plate.png', 'plate.png', 'plate.png'])
  expect(keepBytes(library, picture('plate.png'))).toBe('before')
  expect(rows(library, usesAt(library, { source: 'hb' }))).toHaveLength(2)
})

test('adding and removing are steps that can be taken back and done again', async () => {
  const library = await temporaryLibrary()
  const caliberId = await save(library, entryOf('Verrin', '17-220'))
  const { useId } = await addAttachment(library, picture('plate.png'), { caliberId })
  await addAttachment(library, picture('train.png', 90), { caliberId })
  const before = await listAttachments(library, { caliberId })
  await removeAttachment(library, useId)
  expect(await names(library, { caliberId })).toEqual(['train.png'])
  expect(await undoLast(library)).toBe('removal of plate.png from Verrin 17-220')
  expect(await listAttachments(library, { caliberId })).toEqual(before)
  expect(await undoLast(library)).toBe('attachment of train.png to Verrin 17-220')
  expect(await undoLast(library)).toBe('attachment of plate.png to Verrin 17-220')
  expect(await names(library, { caliberId })).toEqual([])
  await redoLast(library)
  await redoLast(library)
  expect(await listAttachments(library, { caliberId })).toEqual(before)
})

test('bytes stay while undo or redo can bring them back, and are let go after that', async () => {
  const library = await temporaryLibrary()
  const caliberId = await save(library, entryOf('Verrin', '17-220'))
  const { useId } = await addAttachment(library, picture('plate.png'), { caliberId })
  await removeAttachment(library, useId)
  await addAttachment(library, picture('train.png', 90), { caliberId })
  expect(kept(library)).toBe(2)
  await undoLast(library)
  // What is done now leaves the attachment that was taken back behind for good.
  await addAttachment(library, picture('barrel.png', 40), { caliberId })
  expect(kept(library)).toBe(2)
  expect(await readAttachment(library, picture('train.png', 90).sha256)).toBeNull()
})

test('a caliber that comes back has its pictures again', async () => {
  const library = await temporaryLibrary()
  const caliberId = await save(library, entryOf('Verrin', '17-220'))
  await addAttachment(library, picture('plate.png'), { caliberId })
  await removeCaliber(library, caliberId)
  await undoLast(library)
  expect(await names(library, { caliberId })).toEqual(['plate.png'])
})

test('nothing is attached to what is not there, and nothing removed twice', async () => {
  const library = await temporaryLibrary()
  const gone = { failure: { code: 'not-found' } }
  await expect(addAttachment(library, picture('a.png'), { caliberId: 7 })).rejects.toMatchObject(gone)
  await expect(addAttachment(library, picture('a.png'), { source: 'hb' })).rejects.toMatchObject(gone)
  await expect(removeAttachment(library, 7)).rejects.toMatchObject(gone)
  expect(kept(library)).toBe(0)
})

test('the hundred and first file of a caliber is refused', async () => {
  const library = await temporaryLibrary()
  const caliberId = await save(library, entryOf('Verrin', '17-220'))
  for (let shade = 0; shade < 100; shade += 1)
    await addAttachment(library, picture(`${shade}.png`, shade), { caliberId })
  await expect(addAttachment(library, picture('more.png', 101), { caliberId })).rejects.toMatchObject({
    failure: { code: 'attachment-refused', details: { name: 'more.png', fault: 'too-many-on-caliber' } },
  })
})
