import { expect, test } from 'vitest'
import { wordRemark } from '../../../core/wording/unusual-remark.ts'

test('a field with one usual value says so', () => {
  expect(wordRemark('hoursPerCentreTurn', { code: 'unusual', value: 4 / 3, usual: [1, 1] })).toBe(
    'Hours per centre turn: 1 1/3 is unusual; it is nearly always 1. Kept as written.',
  )
})
