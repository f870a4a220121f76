import fc from 'fast-check'
import { expect, it } from 'vitest'
import { inertiaForRate, rateOfBalance, stiffnessForRate } from '../../../core/formulas/balance-oscillator.ts'

it('gives the rate for which stiffness and inertia were found', () => {
  const inertia = fc.double({ min: 0.1, max: 500, noNaN: true })
  fc.assert(
    fc.property(inertia, fc.integer({ min: 7200, max: 72000 }), (inertiaMgCm2, rate) => {
      const stiffness = stiffnessForRate(inertiaMgCm2, rate)
      expect(rateOfBalance(inertiaMgCm2, stiffness) / rate).toBeCloseTo(1, 9)
      expect(inertiaForRate(stiffness, rate) / inertiaMgCm2).toBeCloseTo(1, 9)
    }),
  )
})

it('beats at half the rate with four times the inertia, and at twice with four times the stiffness', () => {
  const rate = rateOfBalance(16, 4e-7)
  expect(rateOfBalance(64, 4e-7) / rate).toBeCloseTo(0.5, 9)
  expect(rateOfBalance(16, 16e-7) / rate).toBeCloseTo(2, 9)
})

it.each([
  ['inertiaMgCm2', () => rateOfBalance(0, 4e-7)],
  ['stiffnessNmPerRad', () => rateOfBalance(16, 0)],
  ['inertiaMgCm2', () => stiffnessForRate(0, 18000)],
  ['beatRateVph', () => stiffnessForRate(16, 0)],
  ['stiffnessNmPerRad', () => inertiaForRate(0, 18000)],
  ['beatRateVph', () => inertiaForRate(4e-7, 0)],
] as const)('refuses a %s of nothing', (field, formula) => {
  expect(formula).toThrow(expect.objectContaining({ code: 'not-positive', details: { field, value: 0 } }))
})
