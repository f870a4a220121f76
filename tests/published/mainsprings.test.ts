import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  type BarrelSizes,
  bestSpringLength,
  insideWithinBridle,
  mostTurns,
  springCoils,
  springFill,
} from '../../core/formulas/barrel.ts'
import { goingHours } from '../../core/formulas/going-hours.ts'
import { hoursPerBarrelTurn } from '../../core/formulas/hours-per-barrel-turn.ts'
import { OutsideRange } from '../../core/formulas/outside-range.ts'

/*
 * Marks: P, published and read; P2, published but read at second hand; D, derived here and computed apart from this code.
 */
const goodrich = 'W. L. Goodrich, The Modern Clock, 1905'

const sizes = (D: number, d: number, e: number, L: number): BarrelSizes => ({
  barrelInsideMm: D,
  barrelArborMm: d,
  springThicknessMm: e,
  springLengthMm: L,
})
const third = 10 / 3
const classical = sizes(10, third, 0.1, 349.0658504)

describe('forward vectors (D)', () => {
  type Vector = readonly [string, BarrelSizes, number, number, number, number, number, number]
  const vectors: readonly Vector[] = [
    ['F1', sizes(10, third, 0.1, 349.066), 0.5, 12.7322, 20.6011, 7.8689, 349.066, 7.8689],
    ['F2', sizes(12, 4, 0.12, 400), 0.47746, 12.0663, 19.9231, 7.8568, 418.879, 7.8689],
    ['F3', sizes(9, 2.6, 0.085, 340), 0.49564, 13.832, 23.5279, 9.6959, 342.988, 9.6964],
    ['F4', sizes(11, 3.2, 0.115, 420), 0.55523, 14.2879, 22.9122, 8.6243, 378.22, 8.701],
    ['F5', sizes(16, 5, 0.18, 480), 0.47622, 10.8813, 18.3869, 7.5056, 503.964, 7.5182],
    ['F6', sizes(8, 2.4, 0.075, 300), 0.49189, 13.6949, 23.1055, 9.4106, 304.944, 9.4124],
    ['F7, long', sizes(10, third, 0.1, 480), 0.68755, 18.8213, 25.8265, 7.0052, 349.066, 7.8689],
    ['F8, short', sizes(10, third, 0.1, 240), 0.34377, 8.334, 15.609, 7.2751, 349.066, 7.8689],
    ['F9', sizes(20, 7, 0.25, 551.35), 0.5, 10.0334, 15.9666, 5.9333, 551.35, 5.9333],
    ['F10', sizes(21.3, 7.1, 0.254, 623.495), 0.5, 10.677, 17.2758, 6.5988, 623.495, 6.5988],
  ]
  it.each(vectors)('%s', (_id, barrel, fill, down, wound, turns, best, most) => {
    const coils = springCoils(barrel)
    expect(Math.abs(springFill(barrel) - fill)).toBeLessThan(0.0001)
    expect(Math.abs(coils.down - down)).toBeLessThan(0.0001)
    expect(Math.abs(coils.wound - wound)).toBeLessThan(0.0001)
    expect(Math.abs(coils.turns - turns)).toBeLessThan(0.0001)
    expect(Math.abs(bestSpringLength(barrel) - best)).toBeLessThan(0.001)
    expect(Math.abs(mostTurns(barrel) - most)).toBeLessThan(0.0001)
  })

  it.each([
    [0.25, 0.8002, 6.2967],
    [1 / 3, 0.9139, 7.1911],
    [0.4, 0.9694, 7.6285],
    [0.45, 0.9924, 7.8092],
    [0.55, 0.9924, 7.8092],
    [0.6, 0.9694, 7.6285],
    [0.75, 0.8002, 6.2967],
  ])('a fill of %d gives %d of the most turns', (fill, share, turns) => {
    const found = springCoils({ ...classical, springLengthMm: 2 * fill * bestSpringLength(classical) }).turns
    expect(found).toBeCloseTo(turns, 4)
    expect(found / mostTurns(classical)).toBeCloseTo(share, 4)
  })
})

describe('the classical arbor of a third of the barrel', () => {
  const { down, wound, turns } = springCoils(classical)

  it('O3: coils wound over coils let down is the golden ratio (D)', () => {
    expect(wound / down).toBeCloseTo((1 + Math.sqrt(5)) / 2, 7)
  })

  it('O4: the spring let down is 0.38197 of the free space and 0.12732 of the barrel thick (D)', () => {
    expect((down * 0.1) / (5 - 5 / 3)).toBeCloseTo(0.3819660113, 7)
    expect((down * 0.1) / 10).toBeCloseTo(0.1273220038, 7)
  })

  it(`E13: 0.39 and 0.123 as printed do not agree with each other or with the geometry (${goodrich}, p. 281; P)`, () => {
    expect(Number('0.39') / 3).not.toBeCloseTo(Number('0.123'), 2)
    expect(Math.abs((down * 0.1) / (5 - 5 / 3) - Number('0.39'))).toBeGreaterThan(0.005)
    expect(Math.abs((down * 0.1) / 10 - Number('0.123'))).toBeGreaterThan(0.0005)
    expect(Math.abs((down * 0.1) / 10 - 1 / 8)).toBeLessThan(0.0025)
  })

  it('O5: barrel over turns times thickness is 12.708 (D); the bench divisor 12.5 is 1.7 % off (H. C. Kelly, A Practical Course in Horology, 1944, p. 25; P2)', () => {
    expect(10 / (turns * 0.1)).toBeCloseTo(12.7082039325, 6)
    expect(12.7082039325 / 12.5).toBeCloseTo(1.017, 3)
  })

  it.each([
    [75, 9.549, 15.451, 5.902],
    [90, 11.459, 18.541, 7.082],
    [120, 15.279, 24.721, 9.443],
  ])('a barrel of %i thicknesses has its coils and turns (D)', (D, down, wound, turns) => {
    const barrel = { barrelInsideMm: D, barrelArborMm: D / 3, springThicknessMm: 1 }
    const coils = springCoils({ ...barrel, springLengthMm: bestSpringLength(barrel) })
    expect([coils.down, coils.wound, coils.turns].map((n) => Number(n.toFixed(3)))).toEqual([down, wound, turns])
  })
})

describe('other arbors at the best length (D)', () => {
  it.each([
    [0.2, 8.2569, 1.8685, 0.376991],
    [0.25, 9.6275, 1.7662, 0.368155],
    [0.3, 11.3326, 1.6742, 0.357356],
    [0.36, 13.9798, 1.5758, 0.341805],
    [0.45, 19.84, 1.4488, 0.313178],
  ])('an arbor of %d of the barrel', (arbor, divisor, ratio, length) => {
    const barrel = { barrelInsideMm: 1, barrelArborMm: arbor, springThicknessMm: 0.01 }
    const springLengthMm = bestSpringLength(barrel)
    const coils = springCoils({ ...barrel, springLengthMm })
    expect(1 / (coils.turns * 0.01)).toBeCloseTo(divisor, 3)
    expect(coils.wound / coils.down).toBeCloseTo(ratio, 4)
    expect(springLengthMm * 0.01).toBeCloseTo(length, 6)
  })
})

describe('printed worked examples', () => {
  it(`O6: 17 coils let down and 25 wound make 8 turns (${goodrich}, p. 281; P)`, () => {
    // At half fill this ratio of coils belongs to an arbor of 0.4334 of the barrel.
    const barrel = { barrelInsideMm: 1, barrelArborMm: 0.4334, springThicknessMm: 0.0067 }
    const coils = springCoils({ ...barrel, springLengthMm: bestSpringLength(barrel) })
    expect(coils.wound / coils.down).toBeCloseTo(25 / 17, 3)
  })

  it('a clock barrel of 20 with hub 7 and spring 0.25 gives 5.93 turns where 5 is printed (mysterieuse-uhren.de 5.6; P)', () => {
    const barrel = { barrelInsideMm: 20, barrelArborMm: 7, springThicknessMm: 0.25 }
    expect(mostTurns(barrel)).toBeCloseTo(5.933, 3)
    expect(bestSpringLength(barrel)).toBeCloseTo(551.35, 2)
    expect(Number('5')).toBeLessThan(mostTurns(barrel) - 0.9)
  })

  it('a barrel of 21.3 needs 623.5 of spring where 619.04 is noted, from a slip in halving the hub (a build log after Daniels; P)', () => {
    const barrel = { barrelInsideMm: 21.3, barrelArborMm: 7.1, springThicknessMm: 0.254 }
    expect(bestSpringLength(barrel)).toBeCloseTo(623.495, 3)
    expect(bestSpringLength({ ...barrel, barrelArborMm: 7.3 })).toBeCloseTo(619.04, 2)
  })

  it('O10: barrel 58 on pinion 8 turns in 7.25 h; 5.5 turns last 39.875 h (GitHub jes/notes, 20231221.md; P)', () => {
    const perTurn = hoursPerBarrelTurn({ barrelTeeth: 58, centrePinion: 8 }).valueOf()
    expect([perTurn, goingHours(5.5, perTurn)]).toEqual([7.25, 39.875])
  })

  it('P2 to P4: 5 turns of 8 h, 4 and 6 turns of 8 h, 16 turns of 12 h (Wikipedia, “Mainspring”; a build log; Goodrich, p. 259; P)', () => {
    expect([goingHours(5, 8), goingHours(4, 8), goingHours(6, 8), goingHours(16, 12)]).toEqual([40, 32, 48, 192])
  })

  it.each([
    [0.1, 7.516],
    [0.12, 7.443],
    [0.15, 7.331],
  ])('a slipping bridle of %d mm lowers 7.869 turns to %d (D)', (bridle, turns) => {
    expect(springCoils({ ...classical, barrelInsideMm: insideWithinBridle(10, bridle) }).turns).toBeCloseTo(turns, 3)
  })

  it('the Archimedean spiral’s 7.42 turns is not what the rings give (D)', () => {
    expect(Math.abs(springCoils(classical).turns - 7.4217)).toBeGreaterThan(0.4)
  })
})

const barrels = fc
  .record({
    D: fc.double({ min: 4, max: 60, noNaN: true }),
    arborShare: fc.double({ min: 0.15, max: 0.6, noNaN: true }),
    thicknessShare: fc.double({ min: 1 / 150, max: 1 / 60, noNaN: true }),
    fill: fc.double({ min: 0.01, max: 0.99, noNaN: true }),
  })
  .map(({ D, arborShare, thicknessShare, fill }) => {
    const barrel = { barrelInsideMm: D, barrelArborMm: D * arborShare, springThicknessMm: D * thicknessShare }
    return { ...barrel, springLengthMm: 2 * fill * bestSpringLength(barrel) }
  })

describe('properties of any barrel (D)', () => {
  it('O1, O2: the best length fills half the free space and gives the most turns', () => {
    fc.assert(
      fc.property(barrels, (barrel) => {
        const best = { ...barrel, springLengthMm: bestSpringLength(barrel) }
        expect(springFill(best)).toBeCloseTo(0.5, 9)
        expect(springCoils(best).turns).toBeCloseTo(mostTurns(barrel), 6)
        expect(springCoils(barrel).turns).toBeLessThanOrEqual(mostTurns(barrel) + 1e-9)
      }),
    )
  })

  it('O7: a spring too long by some length turns as often as one too short by it', () => {
    fc.assert(
      fc.property(barrels, (barrel) => {
        const mirrored = { ...barrel, springLengthMm: 2 * bestSpringLength(barrel) - barrel.springLengthMm }
        expect(springCoils(mirrored).turns).toBeCloseTo(springCoils(barrel).turns, 6)
      }),
    )
  })

  it('O8: all sizes scaled alike leave coils, turns and fill as they were', () => {
    fc.assert(
      fc.property(barrels, fc.double({ min: 0.2, max: 5, noNaN: true }), (barrel, scale) => {
        const scaled = sizes(
          barrel.barrelInsideMm * scale,
          barrel.barrelArborMm * scale,
          barrel.springThicknessMm * scale,
          barrel.springLengthMm * scale,
        )
        expect(springFill(scaled)).toBeCloseTo(springFill(barrel), 9)
        expect(springCoils(scaled).turns).toBeCloseTo(springCoils(barrel).turns, 6)
      }),
    )
  })

  it('turns go to nothing at both ends: no spring, and a spring that fills the space', () => {
    fc.assert(
      fc.property(barrels, (barrel) => {
        const full = 2 * bestSpringLength(barrel)
        expect(springCoils({ ...barrel, springLengthMm: full * 1e-9 }).turns).toBeLessThan(1e-4)
        expect(springCoils({ ...barrel, springLengthMm: full * (1 - 1e-9) }).turns).toBeLessThan(1e-4)
      }),
    )
  })

  it('at the same strip area, turns go as one over the thickness', () => {
    fc.assert(
      fc.property(barrels, (barrel) => {
        const half = {
          ...barrel,
          springThicknessMm: barrel.springThicknessMm / 2,
          springLengthMm: barrel.springLengthMm * 2,
        }
        expect(springCoils(half).turns).toBeCloseTo(2 * springCoils(barrel).turns, 6)
      }),
    )
  })
})

describe('figures that no barrel has are refused with their reason', () => {
  it.each([
    ['spring-overfills-barrel', sizes(10, third, 0.1, 700)],
    ['arbor-fills-barrel', sizes(10, 10, 0.1, 300)],
    ['arbor-fills-barrel', sizes(10, 11, 0.1, 300)],
    ['not-positive', sizes(10, third, 0, 300)],
    ['not-positive', sizes(10, third, -0.1, 300)],
    ['not-positive', sizes(10, third, 0.1, 0)],
    ['not-positive', sizes(0, third, 0.1, 300)],
    ['not-positive', sizes(10, 0, 0.1, 300)],
    ['not-positive', sizes(10, Number.NaN, 0.1, 300)],
  ])('%s', (code, barrel) => {
    expect(() => springCoils(barrel)).toThrow(OutsideRange)
    expect(() => springCoils(barrel)).toThrow(code)
  })

  it('a bridle as thick as half the barrel leaves no room', () => {
    expect(() => insideWithinBridle(10, 5)).toThrow('bridle-fills-barrel')
  })
})
