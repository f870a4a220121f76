import fc from 'fast-check'
import { expect, test } from 'vitest'
import { gaugeNumber } from '../../../core/springs/gauge-number.ts'

test.each([
  ['12', '12'],
  [' 2/0', '2/0'],
  ['2 ⁄ 0', '2/0'],
  ['5½', '5 1/2'],
  ['5 1/2', '5 1/2'],
  ['½', '1/2'],
  ['12,5', '12.5'],
  ['No. 14', '14'],
  ['n° 7', '7'],
  ['Nr 3/0', '3/0'],
  ['12A', '12a'],
])('%s is a number of a gauge', (printed, number) => {
  expect(gaugeNumber(printed)).toBe(number)
})

test.each(['', 'fine', '12/100', '0.12 mm', '12 14', '-3', '2/00', '1234', '7/13', '12x'])('%s is none', (printed) => {
  expect(gaugeNumber(printed)).toBeNull()
})

test('00 and 2/0 stay two numbers, and so do 05 and 5', () => {
  expect(gaugeNumber('00')).not.toBe(gaugeNumber('2/0'))
  expect(gaugeNumber('05')).not.toBe(gaugeNumber('5'))
})

test('a number in its one form is the same number again', () => {
  fc.assert(
    fc.property(fc.string({ unit: fc.constantFrom(...'0123456789/ ½.,aN°'), maxLength: 8 }), (text) => {
      const number = gaugeNumber(text)
      if (number !== null) expect(gaugeNumber(number)).toBe(number)
    }),
  )
})
