import { expect, test } from 'vitest'
import { workingLine } from '../../../core/wording/working-line.ts'

test('thousands are set apart and a long decimal is rounded', () => {
  expect(workingLine({ formula: '80/10 × 75/10 × 80/8 × 2 × 15', gives: 18000 })).toBe(
    '80/10 × 75/10 × 80/8 × 2 × 15 = 18\u202f000',
  )
  expect(workingLine({ formula: '1 ÷ 3', gives: 1 / 3 })).toBe('1 ÷ 3 = 0.333')
})

test('thousands are set apart in the sum too, and the terms of a fraction are left whole', () => {
  expect(workingLine({ formula: '18000 ÷ 7200', gives: '2.5 Hz' })).toBe('18\u202f000 ÷ 7200 = 2.5 Hz')
  expect(workingLine({ formula: '12345/10 × 0.1234567', gives: 1 })).toBe('12345/10 × 0.1234567 = 1')
})

test('a result that no decimal holds stands as it was written', () => {
  expect(workingLine({ formula: '143616 ÷ 14 2/5', gives: '9973 1/3' })).toBe('143\u202f616 ÷ 14 2/5 = 9973 1/3')
})
