import { expect, it } from 'vitest'
import type { OrderLine } from '../../../core/orders/order-line.ts'
import { receivedSpring } from '../../../core/orders/received-spring.ts'

const spring = { heightMm: 1.5, thicknessMm: 0.105, lengthMm: 360 }
const line: OrderLine = {
  kind: 'spring',
  what: '1.50 × 0.105 × 360 mm',
  spring,
  quantity: 2,
  state: 'received',
  at: '2031-05-01T08:00:00Z',
}

it('goes into the tray under the number it was ordered by, or under its sizes', () => {
  expect(receivedSpring({ ...line, supplierRef: 'SA 150', tray: 'Sarelle' })).toEqual({
    ...spring,
    supplierRef: 'SA 150',
  })
  expect(receivedSpring(line)).toEqual({ ...spring, supplierRef: '1.50 × 0.105 × 360 × –' })
})

it('is nothing for a part, before it is received, without sizes, and once it lies there', () => {
  expect(receivedSpring({ ...line, kind: 'part' })).toBeNull()
  expect(receivedSpring({ ...line, state: 'ordered' })).toBeNull()
  expect(receivedSpring({ ...line, spring: undefined })).toBeNull()
  expect(receivedSpring({ ...line, bookedIn: true })).toBeNull()
})
