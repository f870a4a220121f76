import { expect, test } from 'vitest'
import { toleranceWidthUm } from '../../../core/quantities/iso-tolerance.ts'

// ISO 286 grade table as two independent pages print it: research/reliability-ux.md section 8, grade B.
test.each([
  [3, 5, 4],
  [3.001, 5, 5],
  [6, 11, 75],
  [10, 7, 15],
  [18, 9, 43],
  [30, 10, 84],
])('a size of %d mm in grade IT%d has %d micrometres', (size, grade, width) => {
  expect(toleranceWidthUm(size, grade)).toBe(width)
})

test('outside the table there is no width', () => {
  expect(toleranceWidthUm(30.001, 6)).toBeUndefined()
  expect(toleranceWidthUm(2, 4)).toBeUndefined()
  expect(toleranceWidthUm(0, 6)).toBeUndefined()
})
