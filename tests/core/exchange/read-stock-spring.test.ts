import { expect, it } from 'vitest'
import { readStockSpring, stockSpringLabel } from '../../../core/exchange/read-stock-spring.ts'

const spring = { supplierRef: 'A 1', heightMm: 1.5, thicknessMm: 0.105, lengthMm: 360 }

it('reads sizes, ends and counts as a list prints them', () => {
  const printed = {
    supplierRef: 4711,
    heightMm: '15/10',
    thicknessMm: '.105',
    lengthMm: '360',
    end: 'T-end',
    inStock: '3',
  }
  expect(readStockSpring(printed)).toEqual({
    ok: true,
    spring: { ...spring, supplierRef: '4711', end: 't-end', inStock: 3 },
  })
})

it('leaves out what is empty and keeps what only a newer version knows', () => {
  const read = readStockSpring({ ...spring, note: '', barrelMm: null, coating: 'blue' })
  expect(read).toEqual({ ok: true, spring: { ...spring, coating: 'blue' } })
})

it.each([
  [{ heightMm: undefined }, 'heightMm', 'missing'],
  [{ supplierRef: '' }, 'supplierRef', 'missing'],
  [{ heightMm: '1,234' }, 'heightMm', 'ambiguous'],
  [{ thicknessMm: 12 }, 'thicknessMm', 'impossible'],
  [{ lengthMm: 'long' }, 'lengthMm', 'unreadable'],
  [{ end: 'knot' }, 'end', 'not-a-choice'],
  [{ heightMm: [1.5] }, 'heightMm', 'not-text'],
  [{ inStock: 'some' }, 'inStock', 'not-a-count'],
  [{ inStock: -1 }, 'inStock', 'not-a-count'],
  [{ note: { text: 'odd' } }, 'note', 'not-text'],
])('names what cannot be read: %j', (change, key, code) => {
  expect(readStockSpring({ ...spring, ...change })).toMatchObject({ ok: false, problem: { key, problem: { code } } })
})

it('names each figure as the trade does', () => {
  expect(['heightMm', 'end', 'inStock', 'coating'].map(stockSpringLabel)).toEqual([
    'Spring height',
    'Spring end',
    'In stock',
    'coating',
  ])
})
