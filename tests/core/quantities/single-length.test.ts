import { expect, test } from 'vitest'
import { readSingleLength } from '../../../core/quantities/single-length.ts'

test('a figure without a unit takes the one printed at the other end', () => {
  expect(readSingleLength('8', 'ligne')).toMatchObject({ length: { unit: 'ligne' } })
  expect(readSingleLength('8')).toMatchObject({ length: { unit: 'mm' } })
})
