import { describe, expect, test } from 'vitest'
import { languages } from '../../../core/fields/field.ts'
import { type ListDef, listFields } from '../../../core/fields/list-fields.ts'

const lists = Object.entries(listFields) as [string, ListDef][]

test('the lists and their columns are the agreed ones', () => {
  expect(Object.fromEntries(lists.map(([key, list]) => [key, Object.keys(list.columns)]))).toEqual({
    jewels: ['place', 'kind', 'count'],
    lubrication: ['place', 'lubricant', 'amount', 'note'],
    depths: ['driver', 'driven', 'driverPitchMm', 'drivenPitchMm', 'centreDistanceMm'],
    parts: ['part', 'number', 'note'],
    stripOrder: ['part', 'after', 'caution'],
  })
})

test('a jewel stands in an agreed place and is of an agreed kind', () => {
  const { place, kind } = listFields.jewels.columns
  expect(Object.keys(place.choices)).toEqual(
    'balance pallet escape fifth fourth third centre barrel sweep winding other'.split(' '),
  )
  expect(Object.keys(kind.choices)).toEqual('hole cap pallet-stone impulse other'.split(' '))
})

describe.each(lists)('%s', (_key, list) => {
  test('says in one sentence what it holds', () => {
    expect(list.meaning).toMatch(/^[A-Z].{20,}\.$/)
  })
  test('has a name in each language', () => {
    for (const language of languages) expect(list.names[language].length).toBeGreaterThan(0)
  })
  test('has at least one column that a line cannot do without', () => {
    expect(Object.values(list.columns).some((column) => column.optional !== true)).toBe(true)
  })
})
