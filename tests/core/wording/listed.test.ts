import { expect, test } from 'vitest'
import { listed } from '../../../core/wording/listed.ts'

test('the last of several words follows an and; one stands alone, and none says nothing', () => {
  expect(listed(['third wheel', 'fourth pinion'])).toBe('third wheel and fourth pinion')
  expect(listed(['third wheel'])).toBe('third wheel')
  expect(listed([])).toBe('')
})
