import { expect, it } from 'vitest'
import { type SpringOrder, springLine, springOrders } from '../../../core/springs/spring-line.ts'

const sizes = { heightMm: 1.5, thicknessMm: 0.105, lengthMm: 360, barrelMm: 10.5 }

it.each([
  ['height-thickness-length-barrel', '1.50 × 0.105 × 360 × 10.5'],
  ['height-thickness-length', '1.50 × 0.105 × 360'],
  ['tenths-hundredths-length', '15 × 10.5 × 360'],
  ['height-hundredths-barrel', '1.50 × 10.5 × 10.5'],
  ['inches', '0.0591 × 0.0041 × 14.17'],
] as const)('writes a spring in the order %s', (order, line) => {
  expect(springLine(sizes, order)).toBe(line)
})

it('writes a decimal comma where the supplier does', () => {
  expect(springLine(sizes, 'height-thickness-length-barrel', ',')).toBe('1,50 × 0,105 × 360 × 10,5')
})

it('shows no more decimals than a figure has, and at least those that the trade writes', () => {
  const line = springLine(
    { heightMm: 2, thicknessMm: 0.18, lengthMm: 430.5, barrelMm: 15 },
    'height-thickness-length-barrel',
  )
  expect(line).toBe('2.00 × 0.18 × 430.5 × 15.0')
})

it('puts a dash where a figure is not known', () => {
  expect(springLine({ heightMm: 1.5, lengthMm: 360 }, 'height-thickness-length')).toBe('1.50 × – × 360')
})

it('names every order', () => {
  for (const order of Object.keys(springOrders) as SpringOrder[]) expect(springOrders[order].label).not.toBe('')
})
