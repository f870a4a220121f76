import { expect, test } from 'vitest'
import { labelOf } from '../../../core/record/label-of.ts'

test('fields and lists have their labels, and an unknown key is its own', () => {
  expect(labelOf('thirdWheel')).toBe('Third wheel')
  expect(labelOf('jewels')).toBe('Jewels by place')
  expect(labelOf('strikeTrain')).toBe('strikeTrain')
  expect(labelOf('toString')).toBe('toString')
})
