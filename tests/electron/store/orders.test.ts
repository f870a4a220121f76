import { expect, test } from 'vitest'
import type { OrderLine } from '../../../core/orders/order-line.ts'
import {
  bookInOrder,
  bringInOrders,
  foreseeOrders,
  listOrders,
  markOrders,
  removeOrder,
  saveOrder,
} from '../../../electron/store/orders.ts'
import { beginRevision, nextUndo, redoLast, undoLast } from '../../../electron/store/revisions.ts'
import { allSprings, saveSpring } from '../../../electron/store/springs.ts'
import { temporaryLibrary } from '../../support/temporary-library.ts'

const line = (what: string, more: Partial<OrderLine> = {}): OrderLine => ({
  kind: 'spring',
  what,
  quantity: 1,
  state: 'open',
  at: '2031-05-01T08:00:00Z',
  ...more,
})

test('lines are put on the list, changed, marked and taken off, and every step is taken back', async () => {
  const library = await temporaryLibrary()
  const id = await saveOrder(library, null, line('1.50 × 0.105 × 360'))
  const other = await saveOrder(library, null, line('click spring', { kind: 'part' }))
  await saveOrder(library, id, line('1.50 × 0.105 × 360', { quantity: 2 }))
  await markOrders(library, [id, other], 'ordered')
  expect(await nextUndo(library)).toBe('marking as ordered of 2 lines of the order list')
  await removeOrder(library, other)
  expect(await listOrders(library)).toEqual([{ id, ...line('1.50 × 0.105 × 360', { quantity: 2, state: 'ordered' }) }])
  await undoLast(library)
  await undoLast(library)
  expect((await listOrders(library)).map(({ state }) => state)).toEqual(['open', 'open'])
  await undoLast(library)
  expect((await listOrders(library))[0]?.quantity).toBe(1)
  await redoLast(library)
  await redoLast(library)
  expect((await listOrders(library)).map(({ state, quantity }) => [state, quantity])).toEqual([
    ['ordered', 2],
    ['ordered', 1],
  ])
})

test('what changes nothing is no step', async () => {
  const library = await temporaryLibrary()
  const id = await saveOrder(library, null, line('click'))
  await saveOrder(library, id, line('click'))
  await markOrders(library, [id], 'open')
  expect(await nextUndo(library)).toBe('putting on the order list of click')
})

test('one line is marked under its own name', async () => {
  const library = await temporaryLibrary()
  const id = await saveOrder(library, null, line('click'))
  await markOrders(library, [id], 'received')
  expect(await nextUndo(library)).toBe('marking as received of click')
})

test('a line that is not there is refused, and then none is marked', async () => {
  const library = await temporaryLibrary()
  const id = await saveOrder(library, null, line('click'))
  const notFound = { failure: { code: 'not-found' } }
  await expect(markOrders(library, [id, 99], 'ordered')).rejects.toMatchObject(notFound)
  await expect(removeOrder(library, 99)).rejects.toMatchObject(notFound)
  await expect(saveOrder(library, 99, line('click'))).rejects.toMatchObject(notFound)
  expect((await listOrders(library))[0]?.state).toBe('open')
})

test('lines of a file come in beside those there are, each once', async () => {
  const library = await temporaryLibrary()
  await saveOrder(library, null, line('click'))
  const incoming = [line('click', { state: 'received' }), line('stem', { kind: 'part', later: 1 })]
  expect(foreseeOrders(library, incoming)).toEqual({ added: 1, updated: 1, unchanged: 0 })
  bringInOrders(library, beginRevision(library, 'import of all.json'), incoming, 0)
  expect(foreseeOrders(library, incoming)).toEqual({ added: 0, updated: 0, unchanged: 2 })
  expect((await listOrders(library)).map(({ id: _, ...rest }) => rest)).toEqual(incoming)
})

test('what was received is laid into the own tray and remembered on its line, as one step', async () => {
  const library = await temporaryLibrary()
  const spring = { heightMm: 1.5, thicknessMm: 0.105, lengthMm: 360 }
  await saveSpring(library, null, { ...spring, supplierRef: 'SA 150', tray: 'Sarelle', price: '9 €' })
  const own = await saveSpring(library, null, { ...spring, supplierRef: 'SA 150', note: 'in its ring', inStock: 1 })
  const received = line('1.50 × 0.105 × 360 mm', {
    spring,
    supplierRef: 'SA 150',
    tray: 'Sarelle',
    quantity: 3,
    state: 'received',
  })
  const id = await saveOrder(library, null, received)
  expect(await bookInOrder(library, id)).toEqual({ ref: 'SA 150', inStock: 4 })
  const stock = async () => (await allSprings(library)).map(({ id: at, inStock }) => [at === own, inStock])
  expect(await stock()).toEqual([
    [true, 4],
    [false, undefined],
  ])
  await expect(bookInOrder(library, id)).rejects.toMatchObject({ failure: { code: 'nothing-to-book' } })
  await undoLast(library)
  expect(await stock()).toEqual([
    [true, 1],
    [false, undefined],
  ])
  expect((await listOrders(library))[0]?.bookedIn).toBeUndefined()
})

test('a spring that was ordered without a number lies in the tray under its sizes', async () => {
  const library = await temporaryLibrary()
  const spring = { heightMm: 1.5, thicknessMm: 0.105, lengthMm: 360 }
  const id = await saveOrder(library, null, line('1.50 × 0.105 × 360 mm', { spring, state: 'received' }))
  expect(await bookInOrder(library, id)).toEqual({ ref: '1.50 × 0.105 × 360 × –', inStock: 1 })
})
