/** What a picture or scan may be, as its own first bytes say. */
export const attachmentTypes = ['image/png', 'image/jpeg', 'application/pdf'] as const
export type AttachmentType = (typeof attachmentTypes)[number]

/** How much is taken: bytes of one file, picture elements of one picture, and files on one caliber or one source. */
export const attachmentLimits = {
  bytes: 25_000_000,
  pixels: 100_000_000,
  perCaliber: 100,
  perSource: 1000,
} as const

/** Why a file is not taken. */
export const attachmentFaults = [
  'empty',
  'too-large',
  'svg',
  'html',
  'program',
  'archive',
  'other-picture',
  'other-kind',
  'damaged',
  'cut-short',
  'too-many-pixels',
  'not-base64',
  'other-bytes',
  'other-type',
  'too-many-on-caliber',
  'too-many-on-source',
  'nowhere',
] as const
export type AttachmentFault = (typeof attachmentFaults)[number]

export type AttachmentKind =
  | { readonly ok: true; readonly type: AttachmentType }
  | { readonly ok: false; readonly fault: AttachmentFault }

const refused = (fault: AttachmentFault): AttachmentKind => ({ ok: false, fault })

const latin = (bytes: Uint8Array, from: number, to: number): string => String.fromCharCode(...bytes.subarray(from, to))
const bigEndian = (bytes: Uint8Array, at: number, length: 2 | 4): number =>
  bytes.subarray(at, at + length).reduce((sum, byte) => sum * 256 + byte, 0)

const sized = (type: AttachmentType, width: number, height: number): AttachmentKind => {
  if (width === 0 || height === 0) return refused('damaged')
  return width * height > attachmentLimits.pixels ? refused('too-many-pixels') : { ok: true, type }
}

/** Chunks of length, name, content and check sum, from IHDR to IEND. */
const readPng = (bytes: Uint8Array): AttachmentKind => {
  if (bytes.length < 33) return refused('cut-short')
  if (bigEndian(bytes, 8, 4) !== 13 || latin(bytes, 12, 16) !== 'IHDR') return refused('damaged')
  for (let at = 8; at + 12 <= bytes.length; at += 12 + bigEndian(bytes, at, 4)) {
    if (latin(bytes, at + 4, at + 8) === 'IEND') {
      return sized('image/png', bigEndian(bytes, 16, 4), bigEndian(bytes, 20, 4))
    }
  }
  return refused('cut-short')
}

/** C0 to CF begin a frame and state its size, but for the tables among them. */
const beginsFrame = (marker: number): boolean =>
  marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc

/** Segments of marker and length up to the frame; then the picture must come to its end mark. */
const readJpeg = (bytes: Uint8Array): AttachmentKind => {
  for (let at = 2; at + 9 <= bytes.length; ) {
    if (bytes[at] !== 0xff) return refused('damaged')
    const marker = bytes[at + 1] ?? 0
    if (marker === 0xff) {
      at += 1
      continue
    }
    if (beginsFrame(marker)) {
      // Some cameras write more of their own after the end mark.
      let end = bytes.lastIndexOf(0xd9)
      while (end > at && bytes[end - 1] !== 0xff) end = bytes.lastIndexOf(0xd9, end - 1)
      if (end <= at) return refused('cut-short')
      return sized('image/jpeg', bigEndian(bytes, at + 7, 2), bigEndian(bytes, at + 5, 2))
    }
    const length = bigEndian(bytes, at + 2, 2)
    if (length < 2) return refused('damaged')
    at += 2 + length
  }
  return refused('cut-short')
}

const readPdf = (bytes: Uint8Array): AttachmentKind =>
  latin(bytes, Math.max(0, bytes.length - 2048), bytes.length).includes('%%EOF')
    ? { ok: true, type: 'application/pdf' }
    : refused('cut-short')

/** The beginning as text without its byte order mark; text in 16 bits a letter is read by its lower halves. */
const opening = (bytes: Uint8Array): string =>
  latin(bytes, 0, 2048)
    .replaceAll('\0', '')
    .replace(/^(?:\u00ef\u00bb\u00bf|\u00ff\u00fe|\u00fe\u00ff)/, '')
    .trimStart()

/**
 * Says by its content, never by its name, whether a file may be kept: a whole PNG, JPEG or PDF, and nothing that could act.
 * @source PNG: W3C Portable Network Graphics, 5.2 signature, 5.3 chunks, 11.2.1 IHDR. JPEG: ITU-T T.81, annex B.
 * PDF: ISO 32000-1, 7.5.2 header and 7.5.5 trailer. All from memory.
 * @example
 * attachmentKind(new Uint8Array([60, 115, 118, 103, 62])) // ({ ok: false, fault: 'svg' })
 */
export const attachmentKind = (bytes: Uint8Array): AttachmentKind => {
  if (bytes.length === 0) return refused('empty')
  if (bytes.length > attachmentLimits.bytes) return refused('too-large')
  const begins = (text: string) => latin(bytes, 0, text.length) === text
  if (begins('\u0089PNG\r\n\u001a\n')) return readPng(bytes)
  if (begins('\u00ff\u00d8\u00ff')) return readJpeg(bytes)
  if (begins('%PDF-')) return readPdf(bytes)
  if ('\u0089PNG\r\n\u001a\n'.startsWith(latin(bytes, 0, 8))) return refused('cut-short')
  const text = opening(bytes)
  if (text.startsWith('<')) {
    if (/<svg[\s>]/i.test(text)) return refused('svg')
    return refused(/<(?:!doctype html|html|head|body|script|iframe|meta)\b/i.test(text) ? 'html' : 'other-kind')
  }
  if (begins('MZ') || begins('\u007fELF') || begins('#!')) return refused('program')
  if (begins('PK\u0003\u0004') || begins('\u001f\u008b')) return refused('archive')
  const otherPicture =
    begins('GIF8') || begins('BM') || begins('II*\0') || begins('MM\0*') || latin(bytes, 8, 12) === 'WEBP'
  return refused(otherPicture || latin(bytes, 4, 8) === 'ftyp' ? 'other-picture' : 'other-kind')
}
