import { describe, expect, it } from 'vitest'
import { torqueFullWindRatio, torqueRateRatio } from '../../core/formulas/spring-torque.ts'
import { rankSprings } from '../../core/springs/rank-springs.ts'

/**
 * What another strip does in the same barrel: inside 10.5 mm, hub 3.4 mm, 8 h to a barrel turn, specified 1.50 × 0.105 × 360.
 * Derived by script from strip theory and the ring model (grade D); no printed table with all of these figures could be had.
 */
const caliber = {
  barrelInsideMm: 10.5,
  barrelArborMm: 3.4,
  springHeightMm: 1.5,
  springThicknessMm: 0.105,
  springLengthMm: 360,
  barrelTeeth: 80,
  centrePinion: 10,
}

describe.each([
  ['the spring specified', 1.5, 0.105, 360, 0.4877, 8.131, 0, 1, 1],
  ['one step thicker', 1.5, 0.11, 360, 0.5109, 7.762, -2.95, 1.1498, 1.0975],
  ['shorter', 1.5, 0.105, 340, 0.4606, 8.097, -0.27, 1.0588, 1],
  ['lower', 1.45, 0.105, 360, 0.4877, 8.131, 0, 0.9667, 0.9667],
  ['one step thinner and longer', 1.5, 0.1, 380, 0.4903, 8.539, 3.26, 0.8184, 0.907],
])('%s', (_, heightMm, thicknessMm, lengthMm, fill, turns, hours, rate, fullWind) => {
  it('fills, turns, goes and pulls as derived', () => {
    const spring = { supplierRef: 'A', heightMm, thicknessMm, lengthMm }
    const [ranked] = rankSprings(caliber, [spring]).ranked
    expect(ranked?.fill).toBeCloseTo(fill, 4)
    expect(ranked?.turns).toBeCloseTo(turns, 3)
    expect((ranked?.goingHours ?? 0) - 8 * 8.1308).toBeCloseTo(hours, 1)
    expect(ranked?.torqueRate).toBeCloseTo(rate, 4)
    expect(ranked?.torqueFullWind).toBeCloseTo(fullWind, 4)
  })
})

/** Change of torque in per cent for a change of thickness by 0.005 and 0.010 mm, e² and e³; derived by script (grade D). */
describe.each([
  [0.06, -0.01, -30.6, -42.1],
  [0.08, 0.005, 12.9, 19.9],
  [0.1, 0.01, 21, 33.1],
  [0.12, -0.005, -8.2, -12],
  [0.15, 0.01, 13.8, 21.4],
  [0.18, 0.005, 5.6, 8.6],
  [0.25, -0.01, -7.8, -11.5],
])('a strip of %d mm changed by %d mm', (thickness, change, square, cube) => {
  const of = (thicknessMm: number) => ({ heightMm: 1.5, thicknessMm, lengthMm: 360 })
  const [changed, before] = [of(thickness + change), of(thickness)]

  it(`changes its torque by ${square} % at full wind and ${cube} % in each turn`, () => {
    expect(100 * (torqueFullWindRatio(changed, before) - 1)).toBeCloseTo(square, 1)
    expect(100 * (torqueRateRatio(changed, before) - 1)).toBeCloseTo(cube, 1)
  })
})
