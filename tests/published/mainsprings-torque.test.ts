import { describe, expect, it } from 'vitest'
import { torqueFullWindRatio, torqueRateRatio } from '../../core/formulas/spring-torque.ts'
import { torqueAtStress, torquePerTurn, turnsToStress } from '../../core/formulas/strip-torque.ts'

/*
 * Torque of strips: research/mainsprings.md, sections 2.1 to 2.5. Marks: P, published and read; M, from memory, not
 * checked; D, derived there by a script apart from this code. Substitutes in one barrel stand in substitute-springs.test.ts.
 */
const strip = (heightMm: number, thicknessMm: number, lengthMm: number) => ({ heightMm, thicknessMm, lengthMm })

/** The figure lies within half of the last digit of the one printed. */
const expectAsPrinted = (found: number, printed: string): void => {
  const decimals = (printed.split('.')[1] ?? '').length
  expect(Math.abs(found - Number(printed)), `${found} for ${printed}`).toBeLessThanOrEqual(0.5000001 / 10 ** decimals)
}

describe('worked examples', () => {
  it('O9, T1: 1200 N·mm at 800 N/mm² with the outer end pinned need 11.52 mm of height and, at 12, 6350.68 mm of length (textbook example 10.22, FOSSEE Scilab Textbook Companion 764; P)', () => {
    // Pinned, the stress is that of twice the torque; the angle is that of the torque itself.
    expectAsPrinted(torqueAtStress({ heightMm: Number('11.52'), thicknessMm: 1.25 }, 800) / 2, '1200')
    const length = (3 * torquePerTurn(strip(12, 1.25, 1), 207000)) / 1200
    expectAsPrinted(length, '6350.68')
  })

  it('T2: a strip of 6 by 0.25 by 2500, pinned, gives 25 N·mm after 40 rad, 500 N·mm of energy (a textbook exercise; M, arithmetic D)', () => {
    const torque = torqueAtStress({ heightMm: 6, thicknessMm: 0.25 }, 800) / 2
    const turns = torque / torquePerTurn(strip(6, 0.25, 2500), 200000)
    expectAsPrinted(torque, '25')
    expectAsPrinted(turns, '6.3662')
    expectAsPrinted((torque / 2) * turns * 2 * Math.PI, '500')
  })

  it.each([
    ['190000', '0.37306'],
    ['193000', '0.37895'],
    ['203400', '0.39937'],
    ['205000', '0.40252'],
    ['210000', '0.41233'],
  ])('T3: 1.50 by 0.100 by 400 at E %s gains %s N·mm a turn (D)', (modulus, printed) => {
    expectAsPrinted(torquePerTurn(strip(1.5, 0.1, 400), Number(modulus)), printed)
  })

  it('T4: at the best length 0.472500 N·mm a turn; 5.000 N·mm at 2000 N/mm², 10.582 turns from free (D)', () => {
    const best = strip(1.5, 0.1, 349.066)
    expectAsPrinted(torquePerTurn(best, 210000), '0.472500')
    expectAsPrinted(torquePerTurn(best, 210000) / (2 * Math.PI), '0.0752007')
    expectAsPrinted(torqueAtStress(best, 2000), '5.000')
    expectAsPrinted(turnsToStress(best, 2000, 210000), '10.582')
  })

  it('T5: unwound by 7 turns it falls to 1.7965 N·mm and has given 149.46 mJ (D)', () => {
    const best = strip(1.5, 0.1, 349.066)
    const full = torqueAtStress(best, 2000)
    const left = full - 7 * torquePerTurn(best, 203400)
    expectAsPrinted(torquePerTurn(best, 203400), '0.457650')
    expectAsPrinted(left, '1.7965')
    expectAsPrinted(left / full, '0.359')
    expectAsPrinted(((full + left) / 2) * 7 * 2 * Math.PI, '149.46')
  })
})

describe('change of thickness at the same length', () => {
  it('O12: 0.01 mm on 0.10 raises the torque of each turn by 33.1 % (D)', () => {
    expectAsPrinted((torqueRateRatio(strip(1.5, 0.11, 360), strip(1.5, 0.1, 360)) - 1) * 100, '33.1')
  })

  it.each([
    ['0.060', '-0.010', '-30.6', '-42.1', '-51.8'],
    ['0.090', '0.005', '11.4', '17.6', '24.1'],
    ['0.120', '-0.005', '-8.2', '-12.0', '-15.7'],
    ['0.200', '0.010', '10.3', '15.8', '21.6'],
    ['0.250', '-0.010', '-7.8', '-11.5', '-15.1'],
  ])(
    '%s changed by %s: %s % at full wind, %s % a turn, %s % a turn at the same fill (D)',
    (e, change, square, cube, fourth) => {
      const before = strip(1.5, Number(e), 360)
      const thicknessMm = Number(e) + Number(change)
      const percent = (ratio: number) => (ratio - 1) * 100
      expectAsPrinted(percent(torqueFullWindRatio({ ...before, thicknessMm }, before)), square)
      expectAsPrinted(percent(torqueRateRatio({ ...before, thicknessMm }, before)), cube)
      // At the same fill the length goes down as the thickness goes up.
      const sameFill = strip(1.5, thicknessMm, (360 * Number(e)) / thicknessMm)
      expectAsPrinted(percent(torqueRateRatio(sameFill, before)), fourth)
    },
  )

  it('height and length are linear: 0.05 on 1.50 is +3.33 %, 360 for 340 is -5.56 % (D)', () => {
    expectAsPrinted((torqueRateRatio(strip(1.55, 0.1, 340), strip(1.5, 0.1, 340)) - 1) * 100, '3.33')
    expectAsPrinted((torqueRateRatio(strip(1.5, 0.1, 360), strip(1.5, 0.1, 340)) - 1) * 100, '-5.56')
  })
})
