import type { AttachmentType } from '../../../core/record/attachment-kind.ts'
import { call } from '../../api/hooks.ts'

/** The bytes of a picture or scan, at an address of this page alone. */
export interface AttachmentFile {
  readonly name: string
  readonly type: AttachmentType
  readonly blob: Blob
  readonly address: string
}

const held = new Map<string, Promise<AttachmentFile>>()
const heldAtMost = 16

const bytesOf = (base64: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0))

const read = async (sha256: string): Promise<AttachmentFile> => {
  const { name, type, data } = await call('attachment.read', { sha256 })
  // The type is the one that the library found by content; a blob address has no other.
  const blob = new Blob([bytesOf(data)], { type })
  return { name, type, blob, address: URL.createObjectURL(blob) }
}

const letGo = (file: Promise<AttachmentFile>) =>
  file.then(
    ({ address }) => URL.revokeObjectURL(address),
    () => undefined,
  )

/** Reads a picture or scan, or hands out the one read lately: bytes under a hash never change. */
export const attachmentFile = (sha256: string): Promise<AttachmentFile> => {
  const file = held.get(sha256) ?? read(sha256)
  held.delete(sha256)
  held.set(sha256, file)
  file.catch(() => held.delete(sha256))
  for (const [oldest, other] of held) {
    if (held.size <= heldAtMost) break
    held.delete(oldest)
    void letGo(other)
  }
  return file
}

/** Hands a picture or scan to the person as a download. */
export const saveAttachment = async (sha256: string): Promise<void> => {
  const { address, name } = await attachmentFile(sha256)
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
}
