import fc from 'fast-check'
import { expect, it } from 'vitest'
import { torqueFullWindRatio, torqueRateRatio } from '../../../core/formulas/spring-torque.ts'
import { torqueAtStress, torquePerTurn, turnsToStress } from '../../../core/formulas/strip-torque.ts'

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const strips = fc.record({
  heightMm: within(0.5, 5),
  thicknessMm: within(0.04, 0.4),
  lengthMm: within(100, 2000),
})

it('reaches a stress after the turns whose torque it is', () => {
  fc.assert(
    fc.property(strips, within(500, 3000), (strip, stress) => {
      const torque = torquePerTurn(strip, 210000) * turnsToStress(strip, stress, 210000)
      expect(torque / torqueAtStress(strip, stress)).toBeCloseTo(1, 12)
    }),
  )
})

it('goes from one strip to another as the ratios say', () => {
  fc.assert(
    fc.property(strips, strips, (one, other) => {
      expect(torquePerTurn(one, 2e5) / torquePerTurn(other, 2e5) / torqueRateRatio(one, other)).toBeCloseTo(1, 12)
      expect(torqueAtStress(one, 9) / torqueAtStress(other, 9) / torqueFullWindRatio(one, other)).toBeCloseTo(1, 12)
    }),
  )
})

it('refuses what is not above zero', () => {
  const strip = { heightMm: 1.5, thicknessMm: 0.1, lengthMm: 400 }
  for (const key of ['heightMm', 'thicknessMm', 'lengthMm'] as const) {
    expect(() => torquePerTurn({ ...strip, [key]: 0 }, 210000)).toThrow('not-positive')
    if (key !== 'lengthMm') expect(() => torqueAtStress({ ...strip, [key]: 0 }, 2000)).toThrow('not-positive')
    if (key !== 'heightMm') expect(() => turnsToStress({ ...strip, [key]: 0 }, 2000, 210000)).toThrow('not-positive')
  }
  expect(() => torquePerTurn(strip, 0)).toThrow('not-positive')
  expect(() => torqueAtStress(strip, 0)).toThrow('not-positive')
  expect(() => turnsToStress(strip, 0, 210000)).toThrow('not-positive')
  expect(() => turnsToStress(strip, 2000, Number.NaN)).toThrow('not-positive')
})
