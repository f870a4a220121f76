import fc from 'fast-check'
import { expect, it } from 'vitest'
import { amplitude, liftTime, usualAmplitude } from '../../../core/formulas/amplitude.ts'

const swing = fc.record({
  liftAngleDeg: fc.double({ min: 20, max: 70, noNaN: true }),
  beatRateVph: fc.integer({ min: 7200, max: 72000 }),
  amplitudeDeg: fc.double({ min: 40, max: 350, noNaN: true }),
})

it('finds the amplitude again from the lift time that it gives', () => {
  fc.assert(
    fc.property(swing, ({ liftAngleDeg, beatRateVph, amplitudeDeg }) => {
      const liftTimeMs = liftTime({ liftAngleDeg, beatRateVph, amplitudeDeg })
      expect(amplitude({ liftAngleDeg, beatRateVph, liftTimeMs })).toBeCloseTo(amplitudeDeg, 6)
    }),
  )
})

it('reads always a little low by the usual formula', () => {
  fc.assert(
    fc.property(swing, ({ liftAngleDeg, beatRateVph, amplitudeDeg }) => {
      const reading = { liftAngleDeg, beatRateVph, liftTimeMs: liftTime({ liftAngleDeg, beatRateVph, amplitudeDeg }) }
      expect(usualAmplitude(reading)).toBeLessThan(amplitude(reading))
    }),
  )
})

it('is half the lift angle where the lift takes a whole vibration, and nothing beyond', () => {
  const slow = { liftAngleDeg: 52, beatRateVph: 18000, liftTimeMs: 200 }
  expect(amplitude(slow)).toBeCloseTo(26)
  expect(liftTime({ liftAngleDeg: 52, beatRateVph: 18000, amplitudeDeg: 26 })).toBeCloseTo(200)
  const beyond = { ...slow, liftTimeMs: 200.1 }
  const refusal = expect.objectContaining({
    code: 'lift-outlasts-vibration',
    details: { liftTimeMs: 200.1, longestMs: 200, beatRateVph: 18000 },
  })
  expect(() => amplitude(beyond)).toThrow(refusal)
  expect(() => usualAmplitude(beyond)).toThrow(refusal)
})

it('refuses a swing that ends within the lift angle', () => {
  expect(() => liftTime({ liftAngleDeg: 52, beatRateVph: 18000, amplitudeDeg: 25.9 })).toThrow(
    expect.objectContaining({ code: 'swing-within-lift', details: { amplitudeDeg: 25.9, liftAngleDeg: 52 } }),
  )
})

it.each(['liftAngleDeg', 'beatRateVph', 'liftTimeMs'] as const)('refuses a %s of nothing', (field) => {
  const reading = { liftAngleDeg: 52, beatRateVph: 18000, liftTimeMs: 12, [field]: 0 }
  const refusal = expect.objectContaining({ code: 'not-positive', details: { field, value: 0 } })
  expect(() => amplitude(reading)).toThrow(refusal)
  expect(() => usualAmplitude(reading)).toThrow(refusal)
})

it.each(['liftAngleDeg', 'beatRateVph', 'amplitudeDeg'] as const)('gives no lift time for a %s of nothing', (field) => {
  expect(() => liftTime({ liftAngleDeg: 52, beatRateVph: 18000, amplitudeDeg: 270, [field]: 0 })).toThrow(
    expect.objectContaining({ code: 'not-positive', details: { field, value: 0 } }),
  )
})
