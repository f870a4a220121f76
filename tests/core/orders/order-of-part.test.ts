import { expect, it } from 'vitest'
import { orderOfPart } from '../../../core/orders/order-of-part.ts'

const name = { maker: 'Verrin', designation: '17-221' }

it('takes number and note along and names the list', () => {
  expect(orderOfPart({ part: 'click', number: '430', note: 'steel' }, name, 'Verrin 17-220')).toEqual({
    kind: 'part',
    what: 'click',
    number: '430',
    caliber: name,
    source: 'parts list of Verrin 17-220',
    note: 'steel',
  })
})

it('leaves out what the list does not give', () => {
  expect(Object.keys(orderOfPart({ part: 'click' }, name, 'Verrin 17-220'))).toEqual([
    'kind',
    'what',
    'caliber',
    'source',
  ])
})
