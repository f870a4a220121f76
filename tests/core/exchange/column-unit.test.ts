import { expect, test } from 'vitest'
import { columnUnitOf, columnUnitsOf, writeColumnUnit } from '../../../core/exchange/column-unit.ts'
import { readField } from '../../../core/record/read-field.ts'

// Names of the units in the four languages: common practice.
test.each([
  ['lignes', 'ligne'],
  ['Linien', 'ligne'],
  ["'''", 'ligne'],
  ['‴', 'ligne'],
  ['lijnen', 'ligne'],
  ['mm', 'mm'],
  ['1/100', 'hundredths-mm'],
  ['1/100 mm', 'hundredths-mm'],
  ['centièmes', 'hundredths-mm'],
  ['Hundertstel', 'hundredths-mm'],
  ['1/10 mm', 'tenths-mm'],
  ['µm', 'micrometre'],
  ['douzièmes', 'douzieme'],
])('%s over a column of lengths is %s', (word, unit) => {
  expect(columnUnitOf('length', word)).toBe(unit)
})

test('rates and durations have their own units, and no unit of another kind', () => {
  expect(columnUnitOf('rate', 'A/h')).toBe('vph')
  expect(columnUnitOf('rate', '/s')).toBe('per-second')
  expect(columnUnitOf('duration', 'jours')).toBe('day')
  expect(columnUnitOf('rate', 'lignes')).toBeUndefined()
  expect(columnUnitOf('text', 'mm')).toBeUndefined()
  expect(columnUnitOf('length', 'coudées')).toBeUndefined()
})

test('the first unit of a kind is the one a bare number is read in', () => {
  expect(columnUnitsOf('length')[0]).toBe('mm')
  expect(columnUnitsOf('rate')[0]).toBe('vph')
  expect(columnUnitsOf('choice')).toEqual([])
})

test.each([
  ['17', 'ligne', "17'''"],
  ['8 3/4', 'ligne', "8 3/4'''"],
  ['8¾', 'ligne', "8¾'''"],
  ['17-17.5', 'ligne', "17-17.5'''"],
  ["17'''", 'ligne', "17'''"],
  ['38,3 mm', 'ligne', '38,3 mm'],
  ['six', 'ligne', 'six'],
  ['', 'ligne', ''],
  ['18', 'hundredths-mm', '18/100'],
  ['5', 'hundredths-mm', '5/100'],
  ['7,5', 'hundredths-mm', '0.075 mm'],
  ['117.5', 'hundredths-mm', '1.175 mm'],
  ['18/100', 'hundredths-mm', '18/100'],
  ['2', 'tenths-mm', '2/10'],
  ['.5', 'tenths-mm', '0.05 mm'],
  ['.0047', 'inch', '.0047"'],
  [',5', 'ligne', ",5'''"],
  ['180', 'micrometre', '180 µm'],
  ['5', 'per-second', '5/s'],
  ['2.5', 'hertz', '2.5 Hz'],
  ['8', 'day', '8 d'],
  ['38.3', 'mm', '38.3'],
  ['18000', null, '18000'],
] as const)('%s under %s is written %s', (printed, unit, written) => {
  expect(writeColumnUnit(printed, unit)).toBe(written)
})

test('a number with the unit of its column is read as that length', () => {
  const mm = (printed: string) => {
    const read = readField('springThicknessMm', printed)
    return read.ok ? read.value : read.problem.code
  }
  expect(mm(writeColumnUnit('18', 'hundredths-mm'))).toBeCloseTo(0.18, 12)
  expect(mm(writeColumnUnit('17,5', 'hundredths-mm'))).toBeCloseTo(0.175, 12)
  expect(mm(writeColumnUnit('180', 'micrometre'))).toBeCloseTo(0.18, 12)
})
