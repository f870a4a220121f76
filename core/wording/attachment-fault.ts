import { type AttachmentFault, attachmentLimits } from '../record/attachment-kind.ts'

const megabytes = attachmentLimits.bytes / 1_000_000
const take = 'Take a PNG, a JPEG or a PDF of it.'

const reasons: Readonly<Record<AttachmentFault, string>> = {
  empty: 'is an empty file. Choose another.',
  'too-large': `is larger than ${megabytes} MB, the most that one file may be. Save it smaller, or in parts.`,
  svg: `is an SVG drawing, which can carry a program, whatever it is called. ${take}`,
  html: `is a web page, which can carry a program, whatever it is called. ${take}`,
  program: `is a program, not a picture. ${take}`,
  archive: `is packed together out of other files. Unpack it, and choose the PNG, JPEG or PDF files in it.`,
  'other-picture': `is a picture of another kind. Save it as PNG or JPEG and choose that.`,
  'other-kind': `is not a PNG, a JPEG or a PDF by its content, whatever it is called. ${take}`,
  damaged: 'is damaged near its beginning. Scan or save it again.',
  'cut-short': 'stops before its end. Copy, scan or save it again.',
  'too-many-pixels': `has more than ${attachmentLimits.pixels / 1_000_000} million picture elements. Save it smaller.`,
  'not-base64': 'did not arrive whole. Try it again.',
  'other-bytes': 'has other bytes than its SHA-256 says, so the file was changed or damaged. Export it again.',
  'other-type': 'is of another type by its content than is written beside it. Export it again.',
  'too-many-on-caliber': `is one too many: a caliber has at most ${attachmentLimits.perCaliber} files. Remove one first.`,
  'too-many-on-source': `is one too many: a source has at most ${attachmentLimits.perSource} files. Remove one first.`,
  nowhere: 'belongs to a caliber or source that is neither in the library nor in the file. Bring that in first.',
}

/**
 * Says why a picture or scan is not taken, and what to do.
 * @example
 * wordAttachmentFault('plate.png', 'empty') // 'plate.png is an empty file. Choose another.'
 */
export const wordAttachmentFault = (name: string, fault: AttachmentFault): string =>
  `${name || 'The file'} ${reasons[fault]}`
