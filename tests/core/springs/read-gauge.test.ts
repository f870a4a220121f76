import fc from 'fast-check'
import { expect, test } from 'vitest'
import { readGauge } from '../../../core/springs/read-gauge.ts'
import { gaugeTableOf } from '../../support/gauge-table-of.ts'

const strength = gaugeTableOf('Brandsma', { 12: 0.14, 13: 0.13, 14: 0.12, '2/0': 0.27 })
const height = gaugeTableOf('Brandsma', { 12: 1.5, 14: 1.7 }, { measures: 'height' })
const harrow = gaugeTableOf('Harrow gauge', { 8: 0.18, 14: 0.12 })

const sizes = (printed: string, ...tables: readonly (typeof strength)[]) =>
  readGauge(printed, tables).reads.map(({ table, row }) => [table.measures, row.mm])
const doubts = (printed: string, ...tables: readonly (typeof strength)[]) =>
  readGauge(printed, tables).doubts.map(({ code }) => code)

test.each([
  'Brandsma 14',
  'BRANDSMA no. 14',
  'No. 14, Brandsma',
  'gauge of Brandsma: 14',
  'Brandsma strength 14',
  'Brandsma, 14 strength',
  'Brandsma, height 12, strength 14',
  'Brandsma Höhe Nr. 12 Stärke Nr. 14',
  'Brandsma 14, length 18',
])('%s is looked up', (printed) => {
  expect(sizes(printed, strength, harrow)).toEqual([['thickness', 0.12]])
  expect(doubts(printed, strength, harrow)).toEqual([])
})

test('of two numbers in a row the one is taken that the table says is its own', () => {
  const second = { ...strength, place: 'second' as const }
  expect(sizes('Brandsma 12 × 2/0', second)).toEqual([['thickness', 0.27]])
  expect(sizes('12 x 2/0 x 18 in, Brandsma', second)).toEqual([['thickness', 0.27]])
  expect(sizes('Brandsma 12 × 2/0', { ...height, place: 'first' }, second)).toEqual([
    ['height', 1.5],
    ['thickness', 0.27],
  ])
})

test.each([
  ['Brandsma 12 × 2/0', 'several-numbers'],
  ['Brandsma 12 or 14', 'other-words'],
  ['Brandsma 12, 14', 'several-numbers'],
  ['Brandsma gauge no. 8 height 14', 'several-numbers'],
  ['Brandsma 12 × 0.14 mm', 'several-numbers'],
  ['Brandsma 1.50 mm × 14', 'several-numbers'],
  ['Brandsma height 12', 'other-measure'],
  ['Brandsma fine 14', 'other-words'],
  ['Brandsma 12 height 14 strength', 'other-words'],
  ['Brandsma 12 strength, 14', 'other-words'],
  ['Brandsma strength 12 strength 14', 'several-numbers'],
  ['Brandsma', 'no-number'],
  ['Brandsma 14/100', 'no-number'],
  ['Brandsma 15', 'no-row'],
  ['Brandsma 00', 'no-row'],
  ['No. 14', 'none-named'],
  ['Brandsmann 14', 'none-named'],
])('%s is not looked up', (printed, why) => {
  expect(sizes(printed, strength)).toEqual([])
  expect(doubts(printed, strength)).toEqual([why])
})

test('the place of a number holds only for numbers in a row', () => {
  const second = { ...strength, place: 'second' as const }
  for (const printed of ['Brandsma 12, 14', 'Brandsma 12 14', 'Brandsma 12 × 0.14 mm', 'Brandsma no. 8 height 14'])
    expect(sizes(printed, second)).toEqual([])
})

test('where both tables of a gauge are there, a number alone could be of either', () => {
  expect(sizes('Brandsma 14', height, strength)).toEqual([])
  expect(doubts('Brandsma 14', height, strength)).toEqual(['either-measure'])
  expect(sizes('Brandsma height 14 strength 12', height, strength)).toEqual([
    ['height', 1.7],
    ['thickness', 0.14],
  ])
  expect(doubts('Brandsma height 13 strength 15', height, strength)).toEqual(['no-row', 'no-row'])
  expect(sizes('Brandsma strength 2/0', height, strength)).toEqual([['thickness', 0.27]])
})

test('a longer name is meant where it stands whole, and the shorter within it is not', () => {
  const fine = gaugeTableOf('Brandsma fine', { 14: 0.1 })
  expect(sizes('Brandsma fine 14', strength, fine)).toEqual([['thickness', 0.1]])
  expect(sizes('Brandsma 14', strength, fine)).toEqual([['thickness', 0.12]])
})

test('a number within the name of a gauge is not its number', () => {
  const eighth = gaugeTableOf('Harrow gauge no. 8', { 14: 0.12, 8: 0.18 })
  expect(sizes('Harrow gauge no. 8 strength 14', eighth)).toEqual([['thickness', 0.12]])
  expect(doubts('Harrow gauge no. 8', eighth)).toEqual(['no-number'])
  expect(doubts('Harrow gauge no. 8 strength 14', harrow)).toEqual([])
  expect(sizes('Harrow gauge no. 8 strength 14', harrow)).toEqual([['thickness', 0.12]])
})

test('two gauges named at once are not told apart, nor two tables of one name and measure', () => {
  expect(doubts('Brandsma or Harrow 14', strength, harrow)).toEqual(['several-named'])
  expect(doubts('Brandsma 14', strength, { ...strength })).toEqual(['several-named'])
})

test('every row of a table is found under its own number, and what is found is always such a row', () => {
  const number = fc.oneof(
    fc.integer({ min: 0, max: 60 }).map(String),
    fc.integer({ min: 2, max: 9 }).map((noughts) => `${noughts}/0`),
    fc.integer({ min: 1, max: 20 }).map((half) => `${half}½`),
  )
  const rows = fc.uniqueArray(fc.tuple(number, fc.integer({ min: 1, max: 300 })), {
    minLength: 1,
    selector: ([text]) => text,
  })
  fc.assert(
    fc.property(rows, fc.string({ maxLength: 30 }), (made, noise) => {
      const table = gaugeTableOf(
        'Quarle',
        made.map(([text, mm]) => [text, mm / 100] as const),
      )
      for (const row of table.rows)
        expect(readGauge(`Quarle no. ${row.number}`, [table]).reads).toEqual([{ table, row }])
      const { reads } = readGauge(`Quarle ${noise}`, [table])
      expect(reads.length).toBeLessThanOrEqual(1)
      for (const { row } of reads) expect(table.rows).toContain(row)
      expect(readGauge(noise, []).reads).toEqual([])
    }),
  )
})
