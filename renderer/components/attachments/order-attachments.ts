import type { AttachmentLine } from './use-attachments.ts'

export interface PageInHand {
  readonly source: string
  readonly page: string
}

const whole = (page: string | null): number | null =>
  page !== null && /^\d{1,6}$/.test(page.trim()) ? Number(page) : null

/** The page of a PDF, counted from 1, on which a printed page stands, if its first page is known. */
export const pdfPageOf = (
  { page, source, type }: Pick<AttachmentLine, 'page' | 'source' | 'type'>,
  inHand: PageInHand,
) => {
  const [first, wanted] = [whole(page), whole(inHand.page)]
  if (type !== 'application/pdf' || source !== inHand.source || first === null || wanted === null) return 1
  return Math.max(1, wanted - first + 1)
}

/** 0 for the page in hand itself, 1 for a PDF in which it may stand, 2 for the caliber's own, 3 for the rest of the source. */
const rank = (line: AttachmentLine, inHand: PageInHand): number => {
  if (line.source === null) return 2
  if (line.source !== inHand.source) return 3
  if (inHand.page.trim() !== '' && line.page?.trim() === inHand.page.trim()) return 0
  return pdfPageOf(line, inHand) > 1 ? 1 : 3
}

/** Pictures and scans with those of the page in hand first. */
export const orderAttachments = (lines: readonly AttachmentLine[], inHand: PageInHand): readonly AttachmentLine[] =>
  lines.toSorted((one, other) => {
    const by = rank(one, inHand) - rank(other, inHand)
    if (by !== 0) return by
    const [a, b] = [whole(one.page) ?? 0, whole(other.page) ?? 0]
    // Of two PDFs the one that begins nearer before the page has it.
    return (rank(one, inHand) === 1 ? b - a : a - b) || one.position - other.position
  })

/** True where the first in order is, or may hold, the page in hand. */
export const showsPageInHand = (line: AttachmentLine | undefined, inHand: PageInHand): boolean =>
  line !== undefined && rank(line, inHand) < 2
