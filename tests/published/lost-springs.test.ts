import { describe, expect, it } from 'vitest'
import { lengthFromMass } from '../../core/formulas/length-from-mass.ts'
import { stripFromPack } from '../../core/formulas/strip-from-pack.ts'
import { thicknessForTurns } from '../../core/formulas/thickness-for-turns.ts'
import { lostSpring } from '../../core/springs/lost-spring.ts'
import { sensitivities } from '../../core/springs/sensitivity.ts'

/** Inside, hub, turns → exact thickness and length; rounded thickness, length and turns again. Derived by script (grade D). */
describe.each([
  ['S1', 10, 10 / 3, 7, 0.11241, 310.52, 0.11, 317.33, 7.154],
  ['S2', 11.5, 3.6, 7.5, 0.12945, 361.88, 0.13, 360.35, 7.468],
  ['S3', 9, 2.8, 7, 0.10926, 262.95, 0.11, 261.18, 6.953],
  ['S4', 14, 4.6, 6.5, 0.17233, 398.41, 0.17, 403.88, 6.589],
  ['S5', 18, 6, 6, 0.23607, 479.09, 0.235, 481.27, 6.027],
  ['S6', 7.5, 2.4, 7.5, 0.08243, 240.54, 0.08, 247.84, 7.728],
  ['S7, hub assumed', 12.4, undefined, 6.8, 0.14349, 374.04, 0.145, 370.15, 6.729],
])('lost spring %s', (_, barrelInsideMm, arbor, turns, thickness, length, rounded, lengthThen, turnsThen) => {
  it('comes out as derived', () => {
    const estimate = lostSpring({ barrelInsideMm, ...(arbor === undefined ? {} : { barrelArborMm: arbor }) }, turns)
    expect(estimate?.exact.thicknessMm).toBeCloseTo(thickness, 5)
    expect(estimate?.exact.lengthMm).toBeCloseTo(length, 2)
    expect(estimate?.thicknessMm).toBe(rounded)
    expect(estimate?.lengthMm).toBeCloseTo(lengthThen, 2)
    expect(estimate?.turns).toBeCloseTo(turnsThen, 3)
  })
})

it('lies 1.7 % from the divisor of the bench, 12.5 for a hub of a third (H. C. Kelly, A Practical Course in Horology, 1944, p. 25, second-hand)', () => {
  const exact = thicknessForTurns(10, 10 / 3, 5.5)
  expect(exact).toBeCloseTo(0.14307, 5)
  expect(10 / 12.5 / 5.5 / exact - 1).toBeCloseTo(0.017, 3)
})

it('differs from a printed step as the drawn hub does: 6 turns in 21.3 mm (a build log after Daniels, Watchmaking, 1981, ch. 9, second-hand)', () => {
  expect(thicknessForTurns(21.3, 7.1, 6)).toBeCloseTo(0.27935, 5)
})

it('reads a strip from its pack: 2.5 mm in 10 coils, and 1.27322 mm in 12.7322 (derived, grade D)', () => {
  expect(stripFromPack(20, 2.5, 10)).toEqual({ thicknessMm: 0.25, lengthMm: expect.closeTo(549.78, 2) })
  expect(stripFromPack(10, 1.27322, 12.7322).thicknessMm).toBeCloseTo(0.1, 6)
  expect(stripFromPack(10, 1.27322, 12.7322).lengthMm).toBeCloseTo(349.066, 2)
})

it('reads a length from the weight: 0.4110 g of steel strip 1.50 × 0.100 is 349.07 mm long (derived, grade D)', () => {
  expect(lengthFromMass(411.0, { heightMm: 1.5, thicknessMm: 0.1 })).toBeCloseTo(349.07, 1)
})

it('changes the turns with an error of measuring as derived (grade D): inside, hub, thickness, length', () => {
  const sizes = { barrelInsideMm: 10, barrelArborMm: 10 / 3, springThicknessMm: 0.1, springLengthMm: 349.066 }
  const by = Object.fromEntries(sensitivities(sizes).map(({ field, change }) => [field, change]))
  expect(by.barrelInsideMm).toBeCloseTo(0.085, 3)
  expect(by.barrelArborMm).toBeCloseTo(-0.138, 3)
  expect(by.springThicknessMm).toBeCloseTo(-0.389, 3)
  expect(by.springLengthMm).toBeCloseTo(-0.005, 3)
})
