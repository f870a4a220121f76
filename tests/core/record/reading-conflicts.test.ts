import { expect, it } from 'vitest'
import { fieldsReadTwice, readingConflicts, readingsMeet } from '../../../core/record/reading-conflicts.ts'
import { caliberPrinted } from '../../support/caliber-printed.ts'

const conflicts = (key: string, ...printed: string[]) =>
  readingConflicts(caliberPrinted({ [key]: printed }).readings).map(({ first, second }) => [
    first.printed,
    second.printed,
  ])

it.each([
  ['diameterMm', "17'''", '38.35'],
  ['springThicknessMm', '18/100', '0.18'],
  ['springThicknessMm', '0.18', '0.175'],
  ['springThicknessMm', 'max 0.19', '0.17'],
  ['springThicknessMm', '0.17…0.19', '0.190'],
  ['beatRateVph', '18 000', '2.5 Hz'],
  ['firstYear', 'c. 1926', '1930'],
  ['escapement', 'lever', 'Lever'],
])('lets %s of %s and %s stand together', (key, ...printed) => {
  expect(conflicts(key, ...printed)).toEqual([])
})

it.each([
  ['thirdWheel', '75', '57'],
  ['springThicknessMm', '0.18', '0.17'],
  ['springThicknessMm', 'max 0.19', '0.20'],
  ['springThicknessMm', 'min 0.19', '0.18'],
  ['firstYear', 'c. 1926', '1932'],
  ['escapement', 'lever', 'cylinder'],
])('holds %s of %s against %s', (key, ...printed) => {
  expect(conflicts(key, ...printed)).toEqual([printed])
})

it('puts the chosen reading first and names every pair', () => {
  const { readings } = caliberPrinted({
    thirdWheel: [{ printed: '57' }, { printed: '75', chosen: true }, { printed: '76' }],
  })
  expect(readingConflicts(readings).map(({ first, second, difference }) => [first.printed, second.printed, difference]))
    // 75 against the two others, and these against each other.
    .toEqual([
      ['75', '57', -18],
      ['75', '76', 1],
      ['57', '76', 19],
    ])
})

it('leaves remarks, names and gauge numbers alone', () => {
  const { readings } = caliberPrinted({ notes: ['one', 'other'], alsoKnownAs: ['a', 'b'], springGauge: ['5', '6'] })
  expect(fieldsReadTwice(readings)).toEqual([])
})

it('holds a value without a printed form as exact', () => {
  expect(readingsMeet({ printed: '', value: 5, chosen: true }, { printed: '', value: 5, chosen: false })).toBe(true)
  expect(readingsMeet({ printed: '', value: 5, chosen: true }, { printed: '', value: 5.01, chosen: false })).toBe(false)
})
