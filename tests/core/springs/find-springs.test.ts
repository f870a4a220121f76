import { describe, expect, it } from 'vitest'
import {
  findSprings,
  readSpringSearch,
  type SpringQuestion,
  shelveSprings,
  traysOf,
} from '../../../core/springs/find-springs.ts'
import type { StockSpring } from '../../../core/springs/stock-spring.ts'

const springs: readonly StockSpring[] = [
  { supplierRef: 'A 10', tray: 'Drawer 3', heightMm: 1.5, thicknessMm: 0.105, lengthMm: 360, price: '4,50 €' },
  { supplierRef: 'A 9', tray: 'Drawer 3', heightMm: 1.55, thicknessMm: 0.105, lengthMm: 340, inStock: 2 },
  { supplierRef: 'B 1', tray: 'Ozanne', heightMm: 1.5, thicknessMm: 0.11, price: '12.00', note: 'for the Maré' },
  { supplierRef: 'B 2', heightMm: 0.9, thicknessMm: 0.07, lengthMm: 220, inStock: 0 },
]
const shelf = shelveSprings(springs)
const find = (question: Partial<SpringQuestion>) =>
  findSprings(shelf, { text: '', tray: null, by: null, down: false, ...question }).map(({ supplierRef }) => supplierRef)

describe('what is typed to find springs', () => {
  it.each([
    ['1.50 × 0.105', { heightMm: 1.5, thicknessMm: 0.105 }],
    ['1,5x0,105x360', { heightMm: 1.5, thicknessMm: 0.105, lengthMm: 360 }],
    ['1.5 x .105 x 360 x 10.5', { heightMm: 1.5, thicknessMm: 0.105, lengthMm: 360, barrelMm: 10.5 }],
    ['1.5 mm x 0.105 mm', { heightMm: 1.5, thicknessMm: 0.105 }],
    ['1.5 x 0.105 x', { heightMm: 1.5, thicknessMm: 0.105 }],
  ])('%s is read as sizes', (text, sizes) => {
    expect(readSpringSearch(text)).toEqual({ words: [], sizes })
  })

  it('keeps the words beside sizes', () => {
    expect(readSpringSearch('Maré 1.5 × 0.11 drawer')).toEqual({
      words: ['mare', 'drawer'],
      sizes: { heightMm: 1.5, thicknessMm: 0.11 },
    })
  })

  it.each(['1.5', 'A 10', '17-220', 'x', '1.5 x', '1.5 x 99 x 3', '1x2x3x4x5', '× ×'])(
    '%s is words and no sizes',
    (text) => {
      expect(readSpringSearch(text).sizes).toEqual({})
    },
  )
})

describe('finding springs', () => {
  it('gives all of them, in the order of the library, where nothing is asked for', () => {
    expect(find({})).toEqual(['A 10', 'A 9', 'B 1', 'B 2'])
  })

  it('looks for every word in number, tray, note and price, whatever the accents', () => {
    expect(find({ text: 'mare ozanne' })).toEqual(['B 1'])
    expect(find({ text: '4,50' })).toEqual(['A 10'])
    expect(find({ text: 'drawer zzz' })).toEqual([])
  })

  it('finds near sizes, the nearest first, and after them one that does not say its length', () => {
    expect(find({ text: '1.50 × 0.105' })).toEqual(['A 10', 'A 9', 'B 1'])
    expect(find({ text: '1,52x0,105x345' })).toEqual(['A 9', 'A 10', 'B 1'])
    expect(find({ text: '1.50 × 0.105 × 360' }).at(-1)).toBe('B 1')
  })

  it('takes a size just within reach and none beyond', () => {
    expect(find({ text: '1.0 × 0.08' })).toEqual(['B 2'])
    expect(find({ text: '1.01 × 0.08' })).toEqual([])
    expect(find({ text: '1.0 × 0.081' })).toEqual([])
    expect(find({ text: '0.9 × 0.07 × 200' })).toEqual(['B 2'])
    expect(find({ text: '0.9 × 0.07 × 199' })).toEqual([])
  })

  it('keeps to one tray, and to the springs on none', () => {
    expect(find({ tray: 'Drawer 3' })).toEqual(['A 10', 'A 9'])
    expect(find({ tray: '' })).toEqual(['B 2'])
  })

  it('puts numbers in texts in their order', () => {
    expect(find({ by: 'supplierRef' })).toEqual(['A 9', 'A 10', 'B 1', 'B 2'])
    expect(find({ by: 'supplierRef', down: true })).toEqual(['B 2', 'B 1', 'A 10', 'A 9'])
  })

  it('leaves last what has nothing in the column, up and down', () => {
    expect(find({ by: 'inStock' })).toEqual(['B 2', 'A 9', 'A 10', 'B 1'])
    expect(find({ by: 'inStock', down: true }).slice(0, 2)).toEqual(['A 9', 'B 2'])
    expect(find({ by: 'price' }).slice(0, 2)).toEqual(['A 10', 'B 1'])
    expect(find({ by: 'price', down: true }).slice(0, 2)).toEqual(['B 1', 'A 10'])
  })

  it('goes by the column also where sizes are asked for', () => {
    expect(find({ text: '1.50 × 0.105', by: 'thicknessMm', down: true })[0]).toBe('B 1')
  })

  it('takes less than a frame of 16 ms among 50 000', () => {
    const many: StockSpring[] = Array.from({ length: 50_000 }, (_, at) => ({
      supplierRef: `S ${at}`,
      tray: at % 3 === 0 ? 'Drawer 3' : 'Ozanne supplies',
      heightMm: 0.8 + (at % 80) * 0.02,
      thicknessMm: 0.06 + (at % 30) * 0.005,
      lengthMm: 200 + (at % 400),
      price: `${at % 20},50 €`,
    }))
    const large = shelveSprings(many)
    const median = (question: SpringQuestion): number => {
      const times = Array.from({ length: 15 }, () => {
        const start = performance.now()
        findSprings(large, question)
        return performance.now() - start
      })
      return times.sort((a, b) => a - b)[7] ?? 0
    }
    for (const text of ['', 'drawer', 's 4999', '1.50 × 0.105', 'ozanne 1.50 × 0.105 × 360'])
      for (const by of [null, 'thicknessMm'] as const)
        expect(median({ text, tray: null, by, down: true }), `${text} by ${by}`).toBeLessThan(16)
  })
})

it('counts the springs of each tray, those on none first', () => {
  expect(traysOf(springs)).toEqual([
    { tray: '', springs: 1 },
    { tray: 'Drawer 3', springs: 2 },
    { tray: 'Ozanne', springs: 1 },
  ])
})
