import { expect, test } from 'vitest'
import { columnUnitsOf } from '../../../core/exchange/column-unit.ts'
import { unitName } from '../../../core/wording/unit-name.ts'

test('every unit of a column has a name of its own', () => {
  const units = (['length', 'rate', 'duration', 'angle'] as const).flatMap(columnUnitsOf)
  const names = units.map(unitName)
  expect(names.every((name) => name !== '')).toBe(true)
  expect(new Set(names).size).toBe(names.length)
})
