import { expect, it } from 'vitest'
import { torqueText } from '../../../core/wording/torque-text.ts'

it('says the torque as a band, as the same, or of full wind alone where the length is not known', () => {
  expect(torqueText(1.1, 1.15)).toBe('10 to 15 % more')
  expect(torqueText(1, 1)).toBe('the same')
  expect(torqueText(1, 0.9)).toBe('0 to 10 % less')
  expect(torqueText(0.9, null)).toBe('10 % less at full wind')
  expect(torqueText(1.1, null)).toBe('10 % more at full wind')
  expect(torqueText(1, null)).toBe('the same at full wind')
  expect(torqueText(null, null)).toBe('–')
})
