import { expect, test } from 'vitest'
import { readNumber, splitFigures } from '../../../core/quantities/printed-number.ts'

const exact = (text: string, grouping: 'ask' | 'thousands' | 'decimal' = 'ask') => {
  const read = readNumber(text, grouping)
  return read.ok ? read.number.exact.toFraction() : read.problem.code
}

test('a mark before three digits is read as the kind of value demands', () => {
  expect(exact('1,234')).toBe('ambiguous')
  expect(exact('1,234', 'thousands')).toBe('1234')
  expect(exact('1,234', 'decimal')).toBe('617/500')
  expect(exact('1.234')).toBe('617/500')
  expect(exact('0,234')).toBe('117/500')
})

test('groups of thousands are read with space, apostrophe, comma or point', () => {
  for (const text of ['1 234 567', "1'234'567", '1,234,567', '1.234.567']) expect(exact(text)).toBe('1234567')
  expect(exact('1.234,5')).toBe('2469/2')
})

test('vulgar fractions are exact', () => {
  expect(exact('8 3/4')).toBe('35/4')
  expect(exact('1/0')).toBe('zero-denominator')
})

test('figures are split from their unit', () => {
  expect(splitFigures('8 3/4 lig')).toEqual({ figures: '8 3/4', rest: 'lig' })
  expect(splitFigures('mm 8')).toBeNull()
})
