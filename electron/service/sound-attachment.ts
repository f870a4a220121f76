import { createHash } from 'node:crypto'
import { type AttachmentFault, attachmentKind, attachmentLimits } from '../../core/record/attachment-kind.ts'
import type { StoredAttachment } from '../store/attachments.ts'

export type SoundAttachment =
  | { readonly ok: true; readonly attachment: StoredAttachment }
  | { readonly ok: false; readonly fault: AttachmentFault }

const base64 = /^[A-Za-z0-9+/]*={0,2}$/

/** Takes bytes in base64 for a picture or scan where their content shows that they are one, and hashes them. */
export const soundAttachment = (name: string, data: string): SoundAttachment => {
  if (data.length > Math.ceil(attachmentLimits.bytes / 3) * 4) return { ok: false, fault: 'too-large' }
  if (data.length % 4 !== 0 || !base64.test(data)) return { ok: false, fault: 'not-base64' }
  const bytes = Buffer.from(data, 'base64')
  const kind = attachmentKind(bytes)
  if (!kind.ok) return kind
  const sha256 = createHash('sha256').update(bytes).digest('hex')
  return { ok: true, attachment: { sha256, type: kind.type, name, bytes, extra: '{}' } }
}
