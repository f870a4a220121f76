import { expect, it } from 'vitest'
import { figure } from '../../../core/wording/figure.ts'

it.each([
  [18000, 0, '18\u202f000'],
  [3600, 0, '3600'],
  [1234567.891, 1, '1\u202f234\u202f567.9'],
  [0.1, 2, '0.1'],
  [-240, 0, '−240'],
  [-0.001, 2, '0'],
])('%d to %i decimals', (value, decimals, text) => {
  expect(figure(value, decimals)).toBe(text)
})
