import { expect, test } from 'vitest'
import { bringInGauges, foreseeGauges, listGauges, removeGauge, saveGauge } from '../../../electron/store/gauges.ts'
import { readRevision, takeBackRevision } from '../../../electron/store/history.ts'
import { beginRevision, listRevisions, nextUndo, redoLast, undoLast } from '../../../electron/store/revisions.ts'
import { gaugeTableOf } from '../../support/gauge-table-of.ts'
import { temporaryLibrary } from '../../support/temporary-library.ts'

const table = gaugeTableOf('Harrow', { '2/0': 0.27, 14: 0.12 })
const other = gaugeTableOf('Brandsma', { 12: 1.5 }, { measures: 'height' })

test('a table is entered, changed and removed, and every step is taken back and done again', async () => {
  const library = await temporaryLibrary()
  const id = await saveGauge(library, null, table)
  const longer = { ...table, rows: [...table.rows, { number: '13', mm: 0.13 }] }
  await saveGauge(library, id, longer)
  await removeGauge(library, id)
  expect(await nextUndo(library)).toBe('removal of gauge table Harrow')
  expect(await listGauges(library)).toEqual([])
  await undoLast(library)
  expect(await listGauges(library)).toEqual([{ id, ...longer }])
  await undoLast(library)
  expect(await listGauges(library)).toEqual([{ id, ...table }])
  await undoLast(library)
  expect(await listGauges(library)).toEqual([])
  await redoLast(library)
  await redoLast(library)
  expect(await listGauges(library)).toEqual([{ id, ...longer }])
})

test('what changes nothing is no step, and a table that is not there is refused', async () => {
  const library = await temporaryLibrary()
  const id = await saveGauge(library, null, table)
  await saveGauge(library, id, { ...table })
  expect(await listRevisions(library, 9)).toHaveLength(1)
  const notFound = { failure: { code: 'not-found', details: { what: 'This gauge table' } } }
  await expect(saveGauge(library, 99, table)).rejects.toMatchObject(notFound)
  await expect(removeGauge(library, 99)).rejects.toMatchObject(notFound)
})

test('a step in the middle is taken back by itself, unless a later one touched the table or its name is taken', async () => {
  const library = await temporaryLibrary()
  const id = await saveGauge(library, null, table)
  await saveGauge(library, null, other)
  const [, entry] = await listRevisions(library, 2)
  expect(await takeBackRevision(library, entry?.id ?? 0)).toBe('taking back of the entry of gauge table Harrow')
  const [back] = await listRevisions(library, 1)
  expect((await readRevision(library, back?.id ?? 0, { offset: 0, limit: 9 })).changes).toEqual([
    { kind: 'gauge', id, before: table, after: null },
  ])
  await saveGauge(library, null, { ...table, name: 'HARROW' })
  await expect(takeBackRevision(library, back?.id ?? 0)).rejects.toMatchObject({ failure: { code: 'same-gauge' } })
})

test('tables of a file come in beside those there are, each once', async () => {
  const library = await temporaryLibrary()
  await saveGauge(library, null, table)
  const incoming = [{ ...table, name: 'Harrow.', later: 1 }, other]
  expect(foreseeGauges(library, incoming)).toEqual({ added: 1, updated: 1, unchanged: 0 })
  bringInGauges(library, beginRevision(library, 'import of all.json'), incoming, 0)
  expect(foreseeGauges(library, incoming)).toEqual({ added: 0, updated: 0, unchanged: 2 })
  expect((await listGauges(library)).map(({ id: _, ...rest }) => rest)).toEqual(incoming)
  await undoLast(library)
  expect((await listGauges(library)).map(({ id: _, ...rest }) => rest)).toEqual([table])
})
