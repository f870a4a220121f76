import { expect, it } from 'vitest'
import { sameOrder } from '../../../core/orders/same-order.ts'

const line = { kind: 'part', what: 'click', number: '430' } as const

it('takes lines for one where they order the same for the same caliber, whatever is noted', () => {
  expect(sameOrder(line, { ...line, note: 'urgent' })).toBe(true)
  expect(sameOrder(line, { ...line, number: '431' })).toBe(false)
  expect(sameOrder(line, { ...line, caliber: { maker: 'Verrin', designation: '8-310' } })).toBe(false)
})
