import { afterEach, beforeEach, expect, test } from 'vitest'
import { openTestLibrary, type TestLibrary } from './open-test-library.ts'

let library: TestLibrary
beforeEach(async () => {
  library = await openTestLibrary()
})
afterEach(() => library.close())

const spring = (supplierRef: string, more: object = {}) => ({
  supplierRef,
  heightMm: 1.5,
  thicknessMm: 0.105,
  lengthMm: 360,
  ...more,
})

test('a list is foreseen, brought in on its tray as one step, and taken back', async () => {
  const list = { tray: 'Sarelle Springs', springs: [spring('A1', { tray: 'elsewhere' }), spring('A2')] }
  const counts = { added: 2, updated: 0, unchanged: 0, removed: 0 }
  expect(await library.call('springs.save-many', { ...list, dryRun: true })).toEqual(counts)
  expect((await library.call('springs.all', {})).springs).toEqual([])
  expect(await library.call('springs.save-many', list)).toEqual(counts)
  expect((await library.call('springs.all', {})).springs.map(({ tray }) => tray)).toEqual([
    'Sarelle Springs',
    'Sarelle Springs',
  ])
  expect((await library.call('library.status', {})).undo).toBe('import of 2 springs on Sarelle Springs')
  await library.call('history.undo', {})
  expect((await library.call('springs.all', {})).springs).toEqual([])
})

test('springs and lines to order are entered, used and removed through their calls', async () => {
  const { id } = await library.call('spring.save', { id: null, spring: spring('A1', { inStock: 2 }) })
  expect(await library.call('spring.book-out', { id, count: 1 })).toEqual({ left: 1 })
  await library.call('spring.remove', { id })
  const line = { kind: 'spring', what: '1.50 × 0.105 × 360', quantity: 1, state: 'open' } as const
  const order = await library.call('order.save', { id: null, line })
  await library.call('orders.mark', { ids: [order.id], state: 'ordered' })
  const { orders } = await library.call('orders.list', {})
  expect(orders).toMatchObject([{ ...line, state: 'ordered', at: expect.stringMatching(/^\d{4}-/) }])
  const { revisions } = await library.call('history.list', {})
  const kinds = await Promise.all(
    revisions.map(
      async (revision) => Object.keys((await library.call('history.read', { id: revision.id })).changes[0] ?? {})[0],
    ),
  )
  expect(kinds).toEqual(['orderId', 'orderId', 'springId', 'springId', 'springId'])
  await library.call('orders.mark', { ids: [order.id], state: 'received' })
  await expect(library.call('order.book-in', { id: order.id })).rejects.toMatchObject({
    failure: { code: 'nothing-to-book' },
  })
  await library.call('order.remove', { id: order.id })
  expect((await library.call('orders.list', {})).orders).toEqual([])
})
