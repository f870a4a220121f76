import { expect, test } from 'vitest'
import { gaugeById, idOfGauge, storedGauges, writeGauge } from '../../../electron/store/gauge-rows.ts'
import { gaugeTableOf } from '../../support/gauge-table-of.ts'
import { temporaryLibrary } from '../../support/temporary-library.ts'

const table = gaugeTableOf('Harrow', { '2/0': 0.27, 14: 0.12 })

test('a table is written and found again, whole, by its id and by its name and measure', async () => {
  const library = await temporaryLibrary()
  const id = writeGauge(library, null, { ...table, later: 1 })
  expect(gaugeById(library, id)).toEqual({ ...table, later: 1 })
  expect(gaugeById(library, id + 1)).toBeNull()
  expect(idOfGauge(library, { ...table, name: ' HARROW.' })).toBe(id)
  expect(idOfGauge(library, { ...table, measures: 'height' })).toBeNull()
  expect(storedGauges(library)).toEqual([{ id, ...table, later: 1 }])
})

test('two tables of one gauge stand for its two measures and not for one', async () => {
  const library = await temporaryLibrary()
  const id = writeGauge(library, null, table)
  writeGauge(library, null, { ...table, measures: 'height', rows: [{ number: '14', mm: 1.5 }] })
  expect(() => writeGauge(library, null, { ...table, name: 'harrow' })).toThrow('same-gauge')
  expect(writeGauge(library, id, { ...table, name: 'harrow' })).toBe(id)
})
