import { expect, test } from 'vitest'
import {
  orderAttachments,
  pdfPageOf,
  showsPageInHand,
} from '../../../../renderer/components/attachments/order-attachments.ts'

const line = (id: number, more: { source?: string; page?: string; pdf?: boolean } = {}) => ({
  id,
  sha256: 'a'.repeat(64),
  name: `${id}`,
  type: more.pdf ? ('application/pdf' as const) : ('image/png' as const),
  size: 1,
  caliberId: more.source === undefined ? 3 : null,
  source: more.source ?? null,
  page: more.page ?? null,
  position: id,
  note: null,
})
const inHand = { source: 'hb', page: '44' }
const order = (...lines: ReturnType<typeof line>[]) => orderAttachments(lines, inHand).map(({ id }) => id)

test('the page in hand comes first, then a PDF that may hold it, the caliber, and the rest by page', () => {
  const rest = [line(1, { source: 'hb', page: '50' }), line(2, { source: 'hb', page: '7' })]
  const pdfs = [line(5, { source: 'hb', page: '1', pdf: true }), line(6, { source: 'hb', page: '40', pdf: true })]
  expect(order(...rest, line(3), ...pdfs, line(4, { source: 'hb', page: '44' }))).toEqual([4, 6, 5, 3, 2, 1])
})

test('a PDF opens at the printed page in hand, and at its first sheet where that cannot be told', () => {
  const pdf = line(1, { source: 'hb', page: '40', pdf: true })
  expect(pdfPageOf(pdf, inHand)).toBe(5)
  expect(pdfPageOf(pdf, { source: 'hb', page: '39' })).toBe(1)
  expect(pdfPageOf(pdf, { source: 'other', page: '44' })).toBe(1)
  expect(pdfPageOf(pdf, { source: 'hb', page: 'xii' })).toBe(1)
  expect(pdfPageOf(line(1, { source: 'hb', page: '40' }), inHand)).toBe(1)
})

test('it is told whether the page in hand is shown', () => {
  expect(showsPageInHand(line(1, { source: 'hb', page: '44' }), inHand)).toBe(true)
  expect(showsPageInHand(line(1), inHand)).toBe(false)
  expect(showsPageInHand(undefined, inHand)).toBe(false)
})
