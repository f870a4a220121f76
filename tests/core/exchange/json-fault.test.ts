import { expect, test } from 'vitest'
import { jsonFaultOffset } from '../../../core/exchange/json-fault.ts'

test.each([
  ['{"a": 1,}', 8],
  ['[1 2]', 3],
  ['{"a" 1}', 5],
  ['[1', 2],
  ['{} x', 3],
  ['["a\nb"]', 1],
])('%s goes wrong at %d', (text, offset) => {
  expect(jsonFaultOffset(text)).toBe(offset)
})
