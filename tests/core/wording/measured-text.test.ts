import { expect, test } from 'vitest'
import { limitsText, measuredText } from '../../../core/wording/measured-text.ts'

test('a measured figure says what it may be off', () => {
  expect(measuredText({ value: 0.0105, low: 0.0095, high: 0.0115 }, 'mm')).toBe('0.0105 ± 0.001 mm')
  expect(measuredText({ value: 0.002, low: 0, high: 0.012 }, 'mm')).toBe('0.002 mm (0 to 0.012)')
  expect(measuredText({ value: 1.5, low: 1.5, high: 1.5 }, '°')).toBe('1.5°')
})

test('limits are a range, or a least figure', () => {
  expect(limitsText({ low: 0.25, high: 0.5 }, '°')).toBe('0.25 to 0.5°')
  expect(limitsText({ low: 0.02, high: Number.POSITIVE_INFINITY }, 'mm')).toBe('at least 0.02 mm')
})
