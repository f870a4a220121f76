import { describe, expect, it } from 'vitest'
import { bestSpringLength } from '../../core/formulas/barrel.ts'
import { surfaceStrain } from '../../core/formulas/spring-bend.ts'
import { springBendsRoundArbor } from '../../core/proofs/spring-bends-round-arbor.ts'
import { springLengthFollowsBarrel } from '../../core/proofs/spring-length-follows-barrel.ts'
import { caliberOf } from '../support/caliber-of.ts'

/*
 * Marks: P, published and read; P2, published but read at second hand; M, from memory, not checked; D, derived here.
 */
/** Half a unit of the last digit of a printed figure. */
const halfOfLastDigit = (printed: string): number => 0.5 / 10 ** (printed.split('.')[1] ?? '').length

const spring = (D: number, d: number, e: number, L: number) =>
  caliberOf({ barrelInsideMm: D, barrelArborMm: d, springThicknessMm: e, springLengthMm: L })

describe('the length of the springs of research/mainsprings.md sections 1.4 and 9', () => {
  it.each([
    ['R3, a clock barrel of 20 with hub 7: 540 printed (mysterieuse-uhren.de 5.6; P)', 20, 7, 0.25, '540', '551.35'],
    [
      'R2, a barrel of 21.3 with hub 7.1: 619.04 noted (a build log after Daniels; P)',
      21.3,
      7.1,
      0.254,
      '619.04',
      '623.495',
    ],
  ])('%s', (_name, D, d, e, printed, best) => {
    const judgement = springLengthFollowsBarrel.judge(spring(D, d, e, Number(printed)))
    expect(judgement).toMatchObject({ outcome: 'agrees' })
    const found = 'found' in judgement ? judgement.found : null
    expect(Math.abs(Number(found) - Number(best))).toBeLessThanOrEqual(halfOfLastDigit(best))
  })

  it('R7: a barrel of 4.18 with a spring of 0.045, "3.4 mm" long, is a misprint (F. Kindler, Die Uhren, 1905, p. 144; P; hub of a third assumed, D)', () => {
    const misprinted = springLengthFollowsBarrel.judge(spring(4.18, 4.18 / 3, 0.045, Number('3.4')))
    expect(misprinted).toMatchObject({ outcome: 'disagrees', reason: 'length-short' })
    // Mass and thickness as printed give 118 to 136 mm.
    for (const length of [118, 136])
      expect(springLengthFollowsBarrel.judge(spring(4.18, 4.18 / 3, 0.045, length))).toMatchObject({
        outcome: 'agrees',
      })
  })
})

describe('the rules of "one third" of research/mainsprings.md section 3, hub a third of the barrel', () => {
  const barrel = { barrelInsideMm: 12, barrelArborMm: 4, springThicknessMm: 0.12 }
  it.each([
    [
      'a third of the free space, by the radius (H. G. Harris, Handbook of Watch and Clock Repairs, 1972, ch. 4; P)',
      4 / 9,
      'agrees',
      '0.991',
    ],
    ['a third of the free space, by the area (the same; P)', 1 / 3, 'doubtful', '0.914'],
    ['a third of the diameter (Workshop Receipts, Fourth Series; P)', 0.625, 'doubtful', '0.952'],
    ['exact half (W. L. Goodrich, The Modern Clock, 1905, pp. 280–281; P)', 0.5, 'agrees', '1.000'],
  ])('%s', (_name, fill, outcome, share) => {
    const springLengthMm = 2 * fill * bestSpringLength(barrel)
    const judgement = springLengthFollowsBarrel.judge(caliberOf({ ...barrel, springLengthMm }))
    expect(judgement.outcome).toBe(outcome)
    const lost = 'details' in judgement ? Number(judgement.details?.lostPercent) / 100 : Number.NaN
    expect(Math.abs(1 - lost - Number(share))).toBeLessThanOrEqual(halfOfLastDigit(share))
  })
})

describe('hub and thickness of research/mainsprings.md section 3', () => {
  it.each([
    ['25', '3.85'],
    ['32', '3.03'],
    ['33.3', '2.91'],
  ])('a hub of %s thicknesses strains a straight strip by %s % (D)', (ratio, percent) => {
    // The ratio is printed to a tenth at best, which moves the last digit of the strain by less than one.
    expect(Math.abs(surfaceStrain(Number(ratio), 1) * 100 - Number(percent))).toBeLessThan(0.01)
  })

  it.each([
    ['watch practice 25 to 32 (M)', [25, 32], 'agrees'],
    ['general engineering, 15 and more (P2/M), warned of below 20 (D)', [15, 19.9], 'doubtful'],
    ['general engineering, 20 to 25 (P2/M)', [20, 25], 'agrees'],
    ['the substitutions a to d of section 2.4 (D)', [30.9, 32.4, 34.0], 'agrees'],
  ] as const)('%s', (_name, ratios, outcome) => {
    for (const ratio of ratios)
      expect(
        springBendsRoundArbor.judge(caliberOf({ barrelArborMm: ratio / 10, springThicknessMm: 0.1 })).outcome,
      ).toBe(outcome)
  })
})
