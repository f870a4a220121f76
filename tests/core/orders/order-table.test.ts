import { expect, it } from 'vitest'
import type { OrderLine } from '../../../core/orders/order-line.ts'
import { groupOrders, orderText, rowsFromOrders } from '../../../core/orders/order-table.ts'

const spring: OrderLine = {
  kind: 'spring',
  what: '1.50 × 0.105 × 360 mm',
  quantity: 2,
  supplierRef: 'SA 150',
  tray: 'Sarelle Springs',
  caliber: { maker: 'Verrin', designation: '17-220' },
  source: 'Handbook',
  page: '44',
  note: 'in its ring',
  state: 'open',
  at: '2031-05-01T08:00:00Z',
}
const click: OrderLine = { kind: 'part', what: 'click', number: '415', quantity: 1, state: 'open', at: '2031-05-02' }

it('gives each line a row with what is ordered, for what, and where its specification stands', () => {
  const [headings, first, second] = rowsFromOrders([spring, click])
  expect(headings?.slice(0, 4)).toEqual(['quantity', 'kind', 'what', 'number'])
  expect(first).toEqual([
    ...[2, 'spring', '1.50 × 0.105 × 360 mm', 'SA 150', 'Sarelle Springs', 'Verrin 17-220'],
    ...['Handbook', '44', 'in its ring', 'open', '2031-05-01'],
  ])
  expect(second).toEqual([1, 'part', 'click', '415', '', '', '', '', '', 'open', '2031-05-02'])
})

it('writes the open lines alone into a letter', () => {
  expect(orderText([spring, { ...click, state: 'ordered' }, { ...click, number: undefined }])).toBe(
    '2 × no. SA 150: 1.50 × 0.105 × 360 mm (for Verrin 17-220)\n1 × click',
  )
})

it('groups by supplier, with those of none last', () => {
  const other = { ...spring, tray: 'Brandsund Parts' }
  expect(groupOrders([click, spring, other, spring]).map(({ supplier, lines }) => [supplier, lines.length])).toEqual([
    ['Brandsund Parts', 1],
    ['Sarelle Springs', 2],
    ['', 1],
  ])
})
