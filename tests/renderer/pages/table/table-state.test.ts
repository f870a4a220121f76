import fc from 'fast-check'
import { expect, test } from 'vitest'
import { columnFromHeading } from '../../../../core/exchange/table-column.ts'
import {
  columnsOf,
  mostRows,
  newTable,
  type TableAction,
  type TableState,
  tableReducer,
} from '../../../../renderer/pages/table/table-state.ts'

const after = (...actions: TableAction[]) => actions.reduce(tableReducer, newTable)
const french = [
  ['Calibre', 'Diamètre (lignes)'],
  ['17-220', '17'],
]
const pasted: TableAction = { type: 'paste', table: french }

test('a paste with headings gives a blank table its columns', () => {
  const { columns, rows } = after(pasted)
  expect(columns).toEqual(french[0]?.map(columnFromHeading))
  expect(rows).toEqual([['17-220', '17']])
})

test('a second paste goes below, each column under its own, unknown ones at the end', () => {
  const { columns, rows } = after(pasted, {
    type: 'paste',
    table: [
      ['Diamètre (mm)', 'Calibre', 'Rayon'],
      ['38', '9-2', 'B3'],
    ],
  })
  expect(columns.map(({ field, unit }) => [field, unit])).toEqual([
    ['designation', null],
    ['diameterMm', 'ligne'],
    ['diameterMm', 'mm'],
    [null, null],
  ])
  expect(rows).toEqual([
    ['17-220', '17'],
    ['9-2', '', '38', 'B3'],
  ])
})

test('cells without headings go in where one stands, over what stood there', () => {
  const state = after(
    { type: 'arrange', fields: ['designation', 'heightMm'] },
    { type: 'write', place: { row: 0, column: 0 }, text: 'a', to: { row: 1, column: 1 } },
    {
      type: 'paste',
      table: [
        ['1', '2'],
        ['3', '4'],
      ],
    },
  )
  expect(state.rows).toEqual([['a'], ['', '1', '2'], ['', '3', '4']])
  expect(state.columns.map(({ field }) => field)).toEqual(['designation', 'heightMm', null])
})

test('a table takes no more than the library does', () => {
  const table = [['Calibre', 'Hauteur'], ...Array.from({ length: mostRows + 5 }, (_, index) => [String(index), '4'])]
  expect(after({ type: 'paste', table }).rows).toHaveLength(mostRows)
})

test('a column is moved with its cells, and one stands in it still', () => {
  const state = after(pasted, { type: 'move-column', column: 1, by: -1 })
  expect(state.columns.map(({ field }) => field)).toEqual(['diameterMm', 'designation'])
  expect(state.rows).toEqual([['17', '17-220']])
  expect(state.at.column).toBe(0)
})

test('what is stored leaves no trace to take back', () => {
  const state = after(pasted, { type: 'stored' }, { type: 'undo' })
  expect(state.rows).toEqual([])
})

test('undo after any steps gives the blank table back, and redo the last one', () => {
  const place = fc.record({ row: fc.nat(4), column: fc.nat(3) })
  const action: fc.Arbitrary<TableAction> = fc.oneof(
    fc.record({ type: fc.constant('write' as const), place, text: fc.string({ maxLength: 4 }) }),
    fc.record({ type: fc.constant('go' as const), to: place }),
    fc.record({ type: fc.constant('remove-row' as const), row: fc.nat(3) }),
    fc.record({ type: fc.constant('move-column' as const), column: fc.nat(3), by: fc.constantFrom(-1 as const, 1) }),
    fc.constant<TableAction>(pasted),
    fc.constant<TableAction>({ type: 'add-column' }),
    fc.constant<TableAction>({ type: 'start-over' }),
  )
  const start: TableState = { ...newTable, columns: columnsOf(['designation', 'heightMm', 'diameterMm', 'shape']) }
  fc.assert(
    fc.property(fc.array(action, { maxLength: 20 }), (actions) => {
      const end = actions.reduce(tableReducer, start)
      const undone = end.past.reduce<TableState>((state) => tableReducer(state, { type: 'undo' }), end)
      const redone = end.past.reduce<TableState>((state) => tableReducer(state, { type: 'redo' }), undone)
      expect([undone.rows, undone.columns]).toEqual([start.rows, start.columns])
      expect([redone.rows, redone.columns]).toEqual([end.rows, end.columns])
      expect(end.at.row).toBeLessThanOrEqual(end.rows.length)
      expect(end.at.column).toBeLessThan(end.columns.length)
    }),
  )
})
