import { expect, test } from 'vitest'
import { table } from '../../../electron/terminal/table.ts'

test('columns stand under each other, numbers to the right', () => {
  expect(
    table([
      ['Turns', '7.25'],
      ['Hours per turn', '18.00'],
    ]),
  ).toBe('Turns            7.25\nHours per turn  18.00')
  expect(table([])).toBe('')
})
