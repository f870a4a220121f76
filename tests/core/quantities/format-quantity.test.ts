import { expect, test } from 'vitest'
import { formatQuantity } from '../../../core/quantities/format-quantity.ts'

test('each kind is written in its canonical unit', () => {
  expect(formatQuantity('length', 0.18)).toBe('0.18 mm')
  expect(formatQuantity('rate', 19800)).toBe('19\u202f800')
  expect(formatQuantity('angle', 52)).toBe('52°')
  expect(formatQuantity('duration', 36)).toBe('36 h')
  expect(formatQuantity('count', 80)).toBe('80')
  expect(formatQuantity('ratio', 4 / 3)).toBe('1 1/3')
  expect(formatQuantity('year', 1926)).toBe('1926')
})
