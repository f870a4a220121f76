import { expect, test } from 'vitest'
import { gaugeStripText, limitsText, measuredText } from '../../../core/wording/measured-text.ts'

test('a measured figure says what it may be off', () => {
  expect(measuredText({ value: 0.0105, low: 0.0095, high: 0.0115 }, 'mm')).toBe('0.0105 ± 0.001 mm')
  expect(measuredText({ value: 0.002, low: 0, high: 0.012 }, 'mm')).toBe('0.002 mm (0 to 0.012)')
  expect(measuredText({ value: 1.5, low: 1.5, high: 1.5 }, '°')).toBe('1.5°')
})

test('limits are a range, or a least figure', () => {
  expect(limitsText({ low: 0.25, high: 0.5 }, '°')).toBe('0.25 to 0.5°')
  expect(limitsText({ low: 0.02, high: Number.POSITIVE_INFINITY }, 'mm')).toBe('at least 0.02 mm')
})

test('a gauge strip is told in words', () => {
  const limits = { low: 0.03, high: 0.05 }
  expect(gaugeStripText(limits, null, 'mm')).toBe('From 0.03 to 0.05 mm; nothing measured.')
  expect(gaugeStripText(null, { value: 1.5, low: 1.4, high: 1.6 }, '°')).toBe('No limits; measured 1.5 ± 0.1°.')
  expect(gaugeStripText({ low: 0.02, high: Number.POSITIVE_INFINITY }, null, 'mm')).toBe(
    'At least 0.02 mm; nothing measured.',
  )
})
