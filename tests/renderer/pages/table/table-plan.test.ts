import { expect, test } from 'vitest'
import type { CaliberEntry } from '../../../../core/exchange/library-file.ts'
import { blankEntry } from '../../../../core/record/entry.ts'
import { type Decision, duplicatesOf, planOf } from '../../../../renderer/pages/table/table-plan.ts'

const entryOf = (designation: string, height: string): CaliberEntry => ({
  ...blankEntry(),
  maker: 'Verrin',
  designation,
  fields: { heightMm: [{ printed: height, source: 'a', chosen: true }] },
})
// Row 1 stands in the library as 7; rows 4 and 5 have the name of row 3.
const offered = [
  { row: 0, entry: entryOf('1', '4.0') },
  { row: 1, entry: entryOf('2', '4.1') },
  { row: 3, entry: entryOf('3', '4.2') },
  { row: 4, entry: entryOf('3', '4.3') },
  { row: 5, entry: entryOf('3', '4.4') },
]
const fresh = { standing: null, twin: null }
const duplicates = duplicatesOf(offered, [
  fresh,
  { standing: 7, twin: null },
  fresh,
  { standing: null, twin: 2 },
  { standing: null, twin: 2 },
])
const plan = (decisions: Record<number, Decision['choice']>, designation = ' 3 B ') =>
  planOf(
    offered,
    duplicates,
    new Map(Object.entries(decisions).map(([row, choice]) => [Number(row), { choice, designation }])),
  )
const briefly = ({ items, rows }: ReturnType<typeof planOf>) =>
  items.map(({ caliberId, entry }, index) => [
    rows[index],
    caliberId,
    entry.designation,
    entry.fields.heightMm?.[0]?.printed,
  ])

test('duplicates know the row of their twin', () => {
  expect(duplicates.map(({ row, standing, twin }) => [row, standing, twin])).toEqual([
    [1, 7, null],
    [4, null, 3],
    [5, null, 3],
  ])
})

test('what is not decided, and what is skipped, stays out', () => {
  const expected = [
    [0, null, '1', '4.0'],
    [3, null, '3', '4.2'],
  ]
  expect(briefly(plan({}))).toEqual(expected)
  expect(briefly(plan({ 1: 'skip', 4: 'skip', 5: 'skip' }))).toEqual(expected)
})

test('an update goes to the caliber that stands, or to the row further up', () => {
  expect(briefly(plan({ 1: 'update', 4: 'update', 5: 'update' }))).toEqual([
    [0, null, '1', '4.0'],
    [1, 7, '2', '4.1'],
    [3, null, '3', '4.4'],
  ])
})

test('both are kept under the designation that was written', () => {
  expect(briefly(plan({ 4: 'both', 5: 'update' }))).toEqual([
    [0, null, '1', '4.0'],
    [3, null, '3', '4.4'],
    [4, null, '3 B', '4.3'],
  ])
})

test('rows of one name that both update a standing caliber become one', () => {
  const two = [offered[2], offered[3]].flatMap((one) => one ?? [])
  const standing = duplicatesOf(two, [
    { standing: 9, twin: null },
    { standing: 9, twin: 0 },
  ])
  const update: Decision = { choice: 'update', designation: '' }
  const both = planOf(
    two,
    standing,
    new Map([
      [3, update],
      [4, update],
    ]),
  )
  expect(briefly(both)).toEqual([[3, 9, '3', '4.3']])
  expect(briefly(planOf(two, standing, new Map([[4, update]])))).toEqual([[4, 9, '3', '4.3']])
})
