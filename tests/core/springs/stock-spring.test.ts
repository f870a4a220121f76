import { expect, it } from 'vitest'
import { stockSpringSchema } from '../../../core/springs/stock-spring.ts'

const spring = { supplierRef: 'A 12', heightMm: 1.5, thicknessMm: 0.105, lengthMm: 360 }

it('keeps what only a newer version knows', () => {
  expect(stockSpringSchema.parse({ ...spring, coating: 'blue' })).toEqual({ ...spring, coating: 'blue' })
})

it.each([
  ['a height of nothing', { heightMm: 0 }],
  ['a thickness beyond any strip', { thicknessMm: 12 }],
  ['less than none in stock', { inStock: -1 }],
  ['half a spring in stock', { inStock: 0.5 }],
  ['an end that the trade does not know', { end: 'knot' }],
  ['no number to order it by', { supplierRef: '' }],
])('refuses %s', (_, change) => {
  expect(stockSpringSchema.safeParse({ ...spring, ...change }).success).toBe(false)
})
