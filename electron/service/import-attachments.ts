import type { FileAttachment, Source } from '../../core/exchange/library-file.ts'
import type { AttachmentFault } from '../../core/record/attachment-kind.ts'
import { wordAttachmentFault } from '../../core/wording/attachment-fault.ts'
import { type IncomingAttachment, type IncomingUse, isAttached } from '../store/attachment-exchange.ts'
import { nameOf } from '../store/caliber-rows.ts'
import type { Library } from '../store/library.ts'
import { soundAttachment } from './sound-attachment.ts'

export interface AttachmentsDecided {
  readonly wanted: readonly IncomingAttachment[]
  readonly refused: readonly { readonly path: string; readonly reason: string }[]
}

interface Beside {
  readonly calibers: readonly { readonly maker: string; readonly designation: string }[]
  readonly sources: readonly Source[]
}

/**
 * Decides which pictures and scans of a file come in, and where: those whose bytes are what their hash and type say, at
 * calibers and sources that are in the library or come in with them. Nothing is written.
 */
export const decideAttachments = (
  library: Library,
  attachments: readonly FileAttachment[],
  beside: Beside,
): AttachmentsDecided => {
  const refused: { path: string; reason: string }[] = []
  const wanted: IncomingAttachment[] = []
  const names = new Set(beside.calibers.map(({ maker, designation }) => JSON.stringify(nameOf(maker, designation))))
  const shelf = new Set(beside.sources.map(({ key }) => key))
  const comesIn = (use: IncomingUse): boolean =>
    'source' in use ? shelf.has(use.source) : names.has(JSON.stringify(nameOf(use.maker, use.designation)))

  for (const [index, written] of attachments.entries()) {
    const path = `attachments[${index}]`
    const refuse = (place: string, fault: AttachmentFault) =>
      refused.push({ path: `${path}${place}`, reason: wordAttachmentFault(written.name, fault) })
    const { sha256, name, type, data, uses, ...extra } = written
    const sound = soundAttachment(name, data)
    if (!sound.ok) {
      refuse('.data', sound.fault)
      continue
    }
    if (sound.attachment.sha256 !== sha256.toLowerCase()) {
      refuse('.sha256', 'other-bytes')
      continue
    }
    if (sound.attachment.type !== type) {
      refuse('.type', 'other-type')
      continue
    }
    const fresh: IncomingUse[] = []
    for (const [at, use] of uses.map(readUse).entries()) {
      const stands = isAttached(library, sound.attachment.sha256, use)
      if (stands === 'not-yet' || (stands === 'nowhere' && comesIn(use))) fresh.push(use)
      else if (stands === 'nowhere') refuse(`.uses[${at}]`, 'nowhere')
    }
    if (uses.length === 0) refuse('.uses', 'nowhere')
    if (fresh.length > 0) wanted.push({ ...sound.attachment, extra: JSON.stringify(extra), uses: fresh })
  }
  return { wanted, refused }
}

const readUse = (use: FileAttachment['uses'][number]): IncomingUse => {
  const { page, position, note, ...rest } = use
  const at = { page: page ?? null, position: position ?? null, note: note ?? null }
  if ('source' in rest && typeof rest.source === 'string') {
    const { source, ...extra } = rest
    return { source, ...at, extra: JSON.stringify(extra) }
  }
  const { caliber, ...extra } = rest as { caliber: { maker: string; designation: string } }
  return { maker: caliber.maker, designation: caliber.designation, ...at, extra: JSON.stringify(extra) }
}
