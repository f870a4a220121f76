import { expect, test } from 'vitest'
import { lengthUnitOf, ligneMm } from '../../../core/quantities/length-units.ts'

test('a ligne is 31250/13853 mm, and the English line is not taken for it', () => {
  expect(ligneMm.toFraction()).toBe('31250/13853')
  expect(lengthUnitOf('lignes')).toBe('ligne')
  expect(lengthUnitOf('line')).toBeUndefined()
})
