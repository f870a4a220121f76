import { expect, it } from 'vitest'
import { orderOfStockSpring } from '../../../core/orders/order-of-stock-spring.ts'

const values = {
  maker: 'Verrin',
  designation: '8-310',
  springHeightMm: 1.5,
  springThicknessMm: 0.105,
  springLengthMm: 360,
}
const stock = {
  tray: 'Ostrow list',
  supplierRef: 'F 1123',
  heightMm: 1.5,
  thicknessMm: 0.11,
  lengthMm: 340,
  inStock: 3,
}

it('says what a substitute stands for', () => {
  expect(orderOfStockSpring(stock, values, 'substitute')).toEqual({
    kind: 'spring',
    what: '1.50 × 0.11 × 340 mm',
    spring: { heightMm: 1.5, thicknessMm: 0.11, lengthMm: 340 },
    supplierRef: 'F 1123',
    tray: 'Ostrow list',
    caliber: { maker: 'Verrin', designation: '8-310' },
    note: 'instead of the specified 1.50 × 0.105 × 360 mm',
  })
})

it('says that an estimate is one, and nothing of a spring as specified', () => {
  expect(orderOfStockSpring(stock, values, 'estimate').note).toBe('estimated, not specified')
  expect(orderOfStockSpring(stock, values, 'specified').note).toBeUndefined()
})

it('names no number for a spring that is yet to be found', () => {
  const line = orderOfStockSpring({ heightMm: 1.5, thicknessMm: 0.105, lengthMm: 360 }, values, 'estimate')
  expect(line).not.toHaveProperty('supplierRef')
  expect(line).toMatchObject({ what: '1.50 × 0.105 × 360 mm', note: 'estimated, not specified' })
})
