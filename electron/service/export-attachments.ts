import type { FileAttachment } from '../../core/exchange/library-file.ts'
import { allAttachments, type PlacedUse } from '../store/attachment-exchange.ts'
import { readAttachment } from '../store/attachments.ts'
import type { Library } from '../store/library.ts'

/** Every picture and scan with its bytes as a library file has them, or those of one caliber; absent where there are none. */
export const exportAttachments = async (
  library: Library,
  caliberId: number | undefined,
): Promise<{ attachments?: FileAttachment[] }> => {
  const attachments: FileAttachment[] = []
  for (const [sha256, uses] of await allAttachments(library, caliberId)) {
    const kept = await readAttachment(library, sha256)
    if (kept === null) continue
    const { name, type, bytes, extra } = kept
    const data = bytes.toString('base64')
    attachments.push({ sha256, name, type, data, uses: uses.map(fileUse), ...JSON.parse(extra) })
  }
  return attachments.length === 0 ? {} : { attachments }
}

const fileUse = ({
  maker,
  designation,
  source,
  page,
  position,
  note,
  extra,
}: PlacedUse): FileAttachment['uses'][number] => ({
  ...(source === null ? { caliber: { maker: maker ?? '', designation: designation ?? '' } } : { source }),
  ...(page === null ? {} : { page }),
  position,
  ...(note === null ? {} : { note }),
  ...JSON.parse(extra),
})
