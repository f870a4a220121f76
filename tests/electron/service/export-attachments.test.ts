import { expect, test } from 'vitest'
import { fileAttachmentSchema } from '../../../core/exchange/library-file.ts'
import { exportAttachments } from '../../../electron/service/export-attachments.ts'
import { addAttachment } from '../../../electron/store/attachments.ts'
import { smallPng } from '../../support/small-files.ts'
import { entryOf, save, temporaryLibrary } from '../../support/temporary-library.ts'

test('a library without pictures says nothing of them; one with some gives each with bytes and places', async () => {
  const library = await temporaryLibrary()
  const caliberId = await save(library, entryOf('Verrin', '17-220'))
  expect(await exportAttachments(library, undefined)).toEqual({})
  const bytes = smallPng()
  const sha256 = 'c'.repeat(64)
  await addAttachment(library, { sha256, type: 'image/png', name: 'plate.png', bytes, extra: '{}' }, { caliberId })
  const written = {
    sha256,
    name: 'plate.png',
    type: 'image/png',
    data: bytes.toString('base64'),
    uses: [{ caliber: { maker: 'Verrin', designation: '17-220' }, position: 0 }],
  }
  expect(await exportAttachments(library, undefined)).toEqual({ attachments: [written] })
  expect(fileAttachmentSchema.parse(written)).toEqual(written)
})
