import fc from 'fast-check'
import { expect, test } from 'vitest'
import { gaugeRowFaults, gaugeTableSchema, possibleGaugeMm } from '../../../core/springs/gauge-table.ts'
import { gaugeTableOf } from '../../support/gauge-table-of.ts'

test('the sizes of a table lie where the field of the caliber may', () => {
  expect(possibleGaugeMm('thickness')).toEqual([0.01, 3])
  expect(possibleGaugeMm('height')).toEqual([0.1, 120])
})

test('a sound table stands as it is, with what a newer version wrote', () => {
  const table = { ...gaugeTableOf('Harrow', { '2/0': 0.27, 14: 0.12 }), place: 'second', later: 1 }
  expect(gaugeRowFaults(gaugeTableOf('Harrow', { '2/0': 0.27 }))).toEqual([])
  expect(gaugeTableSchema.parse(table)).toEqual(table)
})

test('a number that stands twice is told at its second row, however it is printed', () => {
  const table = gaugeTableOf('Harrow', [
    ['2/0', 0.27],
    ['14', 0.12],
    ['2 / 0', 0.28],
  ])
  expect(gaugeRowFaults(table)).toEqual([
    { row: 2, key: 'number', problem: { code: 'number-twice', text: '2 / 0', row: 0 } },
  ])
  expect(gaugeTableSchema.safeParse(table).error?.issues[0]?.path).toEqual(['rows', 2, 'number'])
})

test('every row that cannot stand is named', () => {
  const table = {
    ...gaugeTableOf('Harrow', [
      ['fine', 0.12],
      ['13', 12],
    ]),
  }
  const printed = { ...table, rows: [...table.rows, { number: '12', mm: 0.14, printed: '15/100' }] }
  expect(gaugeRowFaults(printed).map(({ row, problem }) => [row, problem.code])).toEqual([
    [0, 'no-gauge-number'],
    [1, 'impossible-size'],
    [2, 'print-differs'],
  ])
})

test('a size as printed may be of any unit that comes to the same', () => {
  for (const [printed, mm] of [
    ['12/100', 0.12],
    ['0,12', 0.12],
    ['0.005 in', 0.127],
    ['1 dz', 31250 / 13853 / 12],
  ] as const) {
    const table = { ...gaugeTableOf('Harrow', {}), rows: [{ number: '1', mm, printed }] }
    expect(gaugeRowFaults(table)).toEqual([])
  }
})

test.each([
  ['no name', { name: ' ' }],
  ['a name of figures alone', { name: '1931' }],
  ['another measure', { measures: 'length' }],
  ['no row', { rows: [] }],
  ['a size of nought', { rows: [{ number: '1', mm: 0 }] }],
])('a table with %s is refused', (_, more) => {
  expect(gaugeTableSchema.safeParse({ ...gaugeTableOf('Harrow', { 1: 0.1 }), ...more }).success).toBe(false)
})

test('tables of different numbers with possible sizes stand', () => {
  const rows = fc.uniqueArray(fc.tuple(fc.integer({ min: 0, max: 99 }), fc.integer({ min: 1, max: 300 })), {
    minLength: 1,
    selector: ([number]) => number,
  })
  fc.assert(
    fc.property(rows, (made) => {
      const table = gaugeTableOf(
        'Harrow',
        made.map(([number, hundredths]) => [String(number), hundredths / 100] as const),
      )
      expect(gaugeTableSchema.safeParse(table).success).toBe(true)
    }),
  )
})
