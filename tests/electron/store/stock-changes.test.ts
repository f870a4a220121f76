import { expect, test } from 'vitest'
import { readRevision, takeBackRevision } from '../../../electron/store/history.ts'
import { saveOrder } from '../../../electron/store/orders.ts'
import { listRevisions } from '../../../electron/store/revisions.ts'
import { allSprings, bookOut, removeSpring, saveSpring, saveSprings } from '../../../electron/store/springs.ts'
import { countStockChanges, orderById, springById, stockChangesOf } from '../../../electron/store/stock-changes.ts'
import { temporaryLibrary } from '../../support/temporary-library.ts'

const spring = (supplierRef: string, more: object = {}) => ({
  supplierRef,
  heightMm: 1.5,
  thicknessMm: 0.105,
  ...more,
})
const all = { offset: 0, limit: 100 }

test('a revision tells what it did with springs, a stretch at a time', async () => {
  const library = await temporaryLibrary()
  await saveSprings(
    library,
    ['A1', 'A2', 'A3'].map((ref) => spring(ref)),
    { action: 'import', replace: null },
  )
  const [revision] = await listRevisions(library, 1)
  const id = revision?.id ?? 0
  expect(countStockChanges(library, id)).toBe(3)
  expect(stockChangesOf(library, id, { offset: 1, limit: 1 })).toMatchObject([
    { kind: 'spring', before: null, after: { supplierRef: 'A2' } },
  ])
  const read = await readRevision(library, id, { offset: 2, limit: 5 })
  expect(read).toMatchObject({ total: 3, changes: [{ after: { supplierRef: 'A3' } }] })
})

test('a step in the middle is taken back by itself, unless a later one touched the same spring', async () => {
  const library = await temporaryLibrary()
  const first = await saveSpring(library, null, spring('A1', { inStock: 5 }))
  await bookOut(library, first, 1, '')
  await saveSpring(library, null, spring('B2'))
  const [, booking, entry] = await listRevisions(library, 10)
  await expect(takeBackRevision(library, entry?.id ?? 0)).rejects.toMatchObject({ failure: { code: 'later-changes' } })
  expect(await takeBackRevision(library, booking?.id ?? 0)).toBe('taking back of the booking out of 1 × spring A1')
  expect(springById(library, first)?.inStock).toBe(5)
  const [back] = await listRevisions(library, 1)
  expect((await readRevision(library, back?.id ?? 0, all)).changes).toMatchObject([
    { kind: 'spring', before: { inStock: 4 }, after: { inStock: 5 } },
  ])
})

test('a removal is not taken back over another spring that has taken its number', async () => {
  const library = await temporaryLibrary()
  const id = await saveSpring(library, null, spring('A1', { note: 'old' }))
  await removeSpring(library, id)
  const [removal] = await listRevisions(library, 1)
  await saveSpring(library, null, spring('A1', { note: 'new' }))
  await expect(takeBackRevision(library, removal?.id ?? 0)).rejects.toMatchObject({ failure: { code: 'same-ref' } })
  expect((await allSprings(library)).map(({ note }) => note)).toEqual(['new'])
})

test('a line of the order list is taken back by itself too', async () => {
  const library = await temporaryLibrary()
  const line = { kind: 'part', what: 'click', quantity: 1, state: 'open', at: '2031' } as const
  const id = await saveOrder(library, null, line)
  await saveSpring(library, null, spring('A1'))
  const [, put] = await listRevisions(library, 2)
  await takeBackRevision(library, put?.id ?? 0)
  expect(orderById(library, id)).toBeNull()
  expect(springById(library, 99)).toBeNull()
})
