import { expect, test } from 'vitest'
import { yearsText } from '../../../renderer/components/years-text.ts'

test.each([
  [1926, 1938, '1926–38'],
  [1898, 1914, '1898–1914'],
  [1901, 1905, '1901–05'],
  [1926, null, 'from 1926'],
  [undefined, 1938, 'to 1938'],
  [1926, 1926, '1926'],
  [null, null, null],
])('%s and %s make %s', (first, last, text) => {
  expect(yearsText(first, last)).toBe(text)
})
