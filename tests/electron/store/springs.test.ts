import { expect, test } from 'vitest'
import { LignebookError } from '../../../core/api/errors.ts'
import { beginRevision, nextUndo, redoLast, undoLast } from '../../../electron/store/revisions.ts'
import {
  allSprings,
  bookOut,
  bringInSprings,
  foreseeSprings,
  removeSpring,
  saveSpring,
  saveSprings,
} from '../../../electron/store/springs.ts'
import { temporaryLibrary } from '../../support/temporary-library.ts'

const spring = (supplierRef: string, more: object = {}) => ({
  supplierRef,
  heightMm: 1.5,
  thicknessMm: 0.105,
  lengthMm: 360,
  ...more,
})

test('a spring is kept whole, with what only a newer version knows, and read back as it was', async () => {
  const library = await temporaryLibrary()
  const whole = spring('A1', {
    tray: 'Drawer 3',
    barrelMm: 10.5,
    end: 'tongue',
    material: 'carbon-steel',
    inStock: 3,
    price: '8,40 €',
    note: 'blued',
    coating: { colour: 'blue' },
  })
  const id = await saveSpring(library, null, whole)
  const bare = await saveSpring(library, null, { supplierRef: 'B2', heightMm: 1.2, thicknessMm: 0.09 })
  expect(await allSprings(library)).toEqual([
    { id: bare, supplierRef: 'B2', heightMm: 1.2, thicknessMm: 0.09 },
    { id, ...whole },
  ])
})

test('springs are read tray by tray, by number as a person counts', async () => {
  const library = await temporaryLibrary()
  const springs = [
    spring('10a', { tray: 'Drawer 12' }),
    spring('2b', { tray: 'Drawer 12' }),
    spring('7', { tray: 'Drawer 3' }),
  ]
  await saveSprings(library, springs, { action: 'import', replace: null })
  expect((await allSprings(library)).map(({ supplierRef }) => supplierRef)).toEqual(['7', '2b', '10a'])
})

test('entering, changing, booking out and removing are steps that are taken back and done again', async () => {
  const library = await temporaryLibrary()
  const id = await saveSpring(library, null, spring('A1', { inStock: 3 }))
  await saveSpring(library, id, spring('A1', { inStock: 4 }))
  expect(await bookOut(library, id, 2, ' Verrin 17-220 ')).toBe(2)
  expect(await nextUndo(library)).toBe('booking out of 2 × spring A1 for Verrin 17-220')
  await removeSpring(library, id)
  const states: unknown[] = []
  for (let step = 0; step < 4; step++) {
    await undoLast(library)
    states.push((await allSprings(library))[0]?.inStock)
  }
  expect(states).toEqual([2, 4, 3, undefined])
  for (let step = 0; step < 3; step++) await redoLast(library)
  expect(await allSprings(library)).toEqual([{ id, ...spring('A1', { inStock: 2 }) }])
})

test('a change that changes nothing is no step', async () => {
  const library = await temporaryLibrary()
  const id = await saveSpring(library, null, spring('A1'))
  await saveSpring(library, id, spring('A1'))
  expect(await nextUndo(library)).toBe('entry of spring A1')
})

test('one number stands on a tray once', async () => {
  const library = await temporaryLibrary()
  await saveSpring(library, null, spring('A1'))
  await saveSpring(library, null, spring('A1', { tray: 'Drawer 3' }))
  const other = await saveSpring(library, null, spring('A2'))
  const refused = expect.objectContaining({ failure: { code: 'same-ref', details: { ref: 'A1', tray: '' } } })
  await expect(saveSpring(library, null, spring('A1'))).rejects.toEqual(refused)
  await expect(saveSpring(library, other, spring('A1'))).rejects.toEqual(refused)
  expect((await allSprings(library)).map(({ supplierRef }) => supplierRef)).toEqual(['A1', 'A2', 'A1'])
})

test('no more is booked out than is there', async () => {
  const library = await temporaryLibrary()
  const id = await saveSpring(library, null, spring('A1', { inStock: 1 }))
  await expect(bookOut(library, id, 2, '')).rejects.toMatchObject({
    failure: { code: 'not-so-many', details: { ref: 'A1', left: 1, count: 2 } },
  })
  const unknown = await saveSpring(library, null, spring('A2'))
  await expect(bookOut(library, unknown, 1, '')).rejects.toThrow(LignebookError)
  expect((await allSprings(library))[0]?.inStock).toBe(1)
})

test('what is not there cannot be changed, removed or booked out', async () => {
  const library = await temporaryLibrary()
  for (const doing of [
    () => saveSpring(library, 7, spring('A1')),
    () => removeSpring(library, 7),
    () => bookOut(library, 7, 1, ''),
  ]) {
    await expect(doing()).rejects.toMatchObject({ failure: { code: 'not-found' } })
  }
})

test('a list comes in as one step, laid over what its tray has, or in its place', async () => {
  const library = await temporaryLibrary()
  const on = (supplierRef: string, more: object = {}) => spring(supplierRef, { tray: 'Sarelle', ...more })
  await saveSpring(library, null, spring('A1'))
  const list = [on('A1'), on('A2'), on('A3')]
  const add = { action: 'import of 3 springs', replace: null }
  expect(await saveSprings(library, list, add)).toEqual({ added: 3, updated: 0, unchanged: 0, removed: 0 })
  const next = [on('A1'), on('A2', { price: '9 €' })]
  const plan = { added: 0, updated: 1, unchanged: 1, removed: 1 }
  expect(foreseeSprings(library, next, 'Sarelle')).toEqual(plan)
  expect(await allSprings(library)).toHaveLength(4)
  expect(await saveSprings(library, next, { action: 'import of 2 springs', replace: 'Sarelle' })).toEqual(plan)
  expect(await allSprings(library)).toHaveLength(3)
  await undoLast(library)
  expect((await allSprings(library)).map(({ supplierRef, price }) => [supplierRef, price])).toEqual([
    ['A1', undefined],
    ['A1', undefined],
    ['A2', undefined],
    ['A3', undefined],
  ])
  expect(await saveSprings(library, list, add)).toEqual({ added: 0, updated: 0, unchanged: 3, removed: 0 })
})

test('springs come in as part of a step that is open', async () => {
  const library = await temporaryLibrary()
  bringInSprings(library, beginRevision(library, 'import of all.json'), [spring('A1')])
  expect(await nextUndo(library)).toBe('import of all.json')
  await undoLast(library)
  expect(await allSprings(library)).toEqual([])
})
