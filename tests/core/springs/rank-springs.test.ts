import fc from 'fast-check'
import { expect, it } from 'vitest'
import { rankSprings } from '../../../core/springs/rank-springs.ts'
import { springVerdicts } from '../../../core/springs/spring-reasons.ts'

const caliber = {
  barrelInsideMm: 10.5,
  barrelArborMm: 3.4,
  barrelDepthMm: 1.6,
  springHeightMm: 1.5,
  springThicknessMm: 0.105,
  springLengthMm: 360,
  springEnd: 'tongue',
} as const

const anySpring = fc.record({
  supplierRef: fc.string({ minLength: 1 }),
  heightMm: fc.integer({ min: 20, max: 34 }).map((n) => n / 20),
  thicknessMm: fc.integer({ min: 16, max: 28 }).map((n) => n / 200),
  lengthMm: fc.integer({ min: 20, max: 60 }).map((n) => n * 10),
})

it('puts the specified spring first and what does not fit last', () => {
  const sizes = (supplierRef: string, heightMm: number, thicknessMm: number) => ({
    supplierRef,
    heightMm,
    thicknessMm,
    lengthMm: 360,
    end: 'tongue' as const,
  })
  const tray = [
    sizes('jams', 1.7, 0.105),
    sizes('strong', 1.5, 0.11),
    sizes('thin', 1.5, 0.1),
    sizes('right', 1.5, 0.105),
  ]
  const { ranked, counts } = rankSprings(caliber, tray)
  expect(ranked.map(({ spring, index }) => [spring.supplierRef, index])).toEqual([
    ['right', 3],
    ['thin', 2],
    ['strong', 1],
    ['jams', 0],
  ])
  expect(counts).toEqual({ 'as-specified': 1, acceptable: 1, 'not-advised': 1, 'does-not-fit': 1 })
})

it('gives the best few as it gives them among all', () => {
  fc.assert(
    fc.property(fc.array(anySpring, { maxLength: 60 }), fc.integer({ min: 1, max: 20 }), (tray, most) => {
      const all = rankSprings(caliber, tray)
      const few = rankSprings(caliber, tray, most)
      expect(few.ranked).toEqual(all.ranked.slice(0, most))
      expect(few.counts).toEqual(all.counts)
      const ranks = all.ranked.map(({ verdict }) => springVerdicts.indexOf(verdict))
      expect(ranks).toEqual(ranks.toSorted((a, b) => a - b))
    }),
  )
})

it('leaves every figure null that cannot be known', () => {
  const [ranked] = rankSprings({}, [{ supplierRef: 'A', heightMm: 1.5, thicknessMm: 0.1, lengthMm: 300 }]).ranked
  expect(ranked).toMatchObject({
    heightClearanceMm: null,
    fill: null,
    turns: null,
    goingHours: null,
    torqueRate: null,
    torqueFullWind: null,
  })
})

it('ranks an empty tray', () => {
  expect(rankSprings(caliber, []).ranked).toEqual([])
})

it('gives back only the verdicts that are wanted, and counts all', () => {
  fc.assert(
    fc.property(fc.array(anySpring, { maxLength: 60 }), fc.subarray([...springVerdicts]), (tray, wanted) => {
      const all = rankSprings(caliber, tray)
      const some = rankSprings(caliber, tray, tray.length, wanted)
      expect(some.ranked).toEqual(all.ranked.filter(({ verdict }) => wanted.includes(verdict)))
      expect(some.counts).toEqual(all.counts)
    }),
  )
})
