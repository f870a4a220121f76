import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { rateOfBalance } from '../../../core/formulas/balance-oscillator.ts'
import { dailyDifference } from '../../../core/formulas/daily-difference.ts'
import { changeForGain, gainFromChange } from '../../../core/formulas/regulation.ts'

const parts = ['inertia', 'stiffness', 'length'] as const

it('gains with a stiffer spring, loses with a heavier balance or a longer spring', () => {
  expect(gainFromChange('stiffness', 0.001)).toBeCloseTo(43.189, 3)
  expect(gainFromChange('inertia', 0.001)).toBeCloseTo(-43.168, 3)
  expect(gainFromChange('length', 0.001)).toBeCloseTo(-43.168, 3)
})

it('says what the law of the balance says', () => {
  const before = rateOfBalance(16, 4e-7)
  expect(gainFromChange('inertia', 0.02)).toBeCloseTo(dailyDifference(rateOfBalance(16 * 1.02, 4e-7), before), 6)
  expect(gainFromChange('stiffness', -0.02)).toBeCloseTo(dailyDifference(rateOfBalance(16, 4e-7 * 0.98), before), 6)
})

describe.each(parts)('%s', (part) => {
  it('is changed by what gives the gain that was asked for', () => {
    fc.assert(
      fc.property(fc.double({ min: -3600, max: 3600, noNaN: true }), (gain) => {
        expect(gainFromChange(part, changeForGain(part, gain))).toBeCloseTo(gain, 6)
      }),
    )
  })

  it('lies close to 43 200 times the share, for small shares', () => {
    expect(Math.abs(gainFromChange(part, 1e-4))).toBeCloseTo(4.32, 2)
  })

  it('cannot come to nothing', () => {
    expect(() => gainFromChange(part, -1)).toThrow(
      expect.objectContaining({ code: 'not-positive', details: { field: part, value: 0 } }),
    )
    expect(() => changeForGain(part, -86400)).toThrow(expect.objectContaining({ code: 'not-positive' }))
  })
})
