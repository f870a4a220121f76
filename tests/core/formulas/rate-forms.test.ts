import { expect, it } from 'vitest'
import { rateForms, vibrationsPerHour } from '../../../core/formulas/rate-forms.ts'

it('gives the same rate in every form', () => {
  expect(rateForms(28800)).toEqual({
    hertz: 4,
    beatsPerSecond: 8,
    beatsPerMinute: 480,
    vibrationMs: 125,
    oscillationMs: 250,
  })
  expect(vibrationsPerHour(rateForms(19800).hertz)).toBeCloseTo(19800, 9)
})

it('refuses a rate of nothing', () => {
  expect(() => rateForms(0)).toThrow(expect.objectContaining({ details: { field: 'beatRateVph', value: 0 } }))
  expect(() => vibrationsPerHour(0)).toThrow(expect.objectContaining({ details: { field: 'hertz', value: 0 } }))
})
