import fc from 'fast-check'
import { expect, it } from 'vitest'
import { bestSpringLength, springCoils } from '../../../core/formulas/barrel.ts'
import { OutsideRange } from '../../../core/formulas/outside-range.ts'
import { type CoilPack, coilPacks, coilsOf } from '../../../core/springs/coil-radii.ts'
import { fitSpring } from '../../../core/springs/fit.ts'

const sizes = { barrelInsideMm: 12, barrelArborMm: 4, springThicknessMm: 0.12, springLengthMm: 400 }
const area = ({ innerMm, outerMm }: CoilPack) => Math.PI * (outerMm ** 2 - innerMm ** 2)

const barrels = fc
  .record({
    barrelInsideMm: fc.double({ min: 4, max: 60, noNaN: true }),
    arborShare: fc.double({ min: 0.15, max: 0.6, noNaN: true }),
    thicknessShare: fc.double({ min: 1 / 150, max: 1 / 60, noNaN: true }),
    fill: fc.double({ min: 0.02, max: 0.98, noNaN: true }),
    wound: fc.double({ min: 0, max: 1, noNaN: true }),
  })
  .map(({ barrelInsideMm, arborShare, thicknessShare, fill, wound }) => {
    const barrel = {
      barrelInsideMm,
      barrelArborMm: barrelInsideMm * arborShare,
      springThicknessMm: barrelInsideMm * thicknessShare,
    }
    return { sizes: { ...barrel, springLengthMm: 2 * fill * bestSpringLength(barrel) }, wound }
  })

it('is at both ends what the fit says of the spring let down and wound', () => {
  const { coilsDown, coilsWound, turns } = fitSpring(sizes)
  const down = coilPacks(sizes, 0)
  expect([down.wall.coils, down.hub.coils]).toEqual([expect.closeTo(coilsDown ?? 0, 9), expect.closeTo(0, 9)])
  const wound = coilPacks(sizes, turns ?? 0)
  expect([wound.wall.coils, wound.hub.coils]).toEqual([expect.closeTo(0, 9), expect.closeTo(coilsWound ?? 0, 9)])
})

it('keeps the area of the strip, and makes one coil more in all with each turn, in any barrel', () => {
  fc.assert(
    fc.property(barrels, ({ sizes, wound }) => {
      const coils = springCoils(sizes)
      const { wall, hub } = coilPacks(sizes, wound * coils.turns)
      const strip = sizes.springLengthMm * sizes.springThicknessMm
      expect((area(wall) + area(hub)) / strip).toBeCloseTo(1, 6)
      expect(wall.coils + hub.coils).toBeCloseTo(coils.down + wound * coils.turns, 6)
      expect(wall.innerMm).toBeGreaterThan(hub.outerMm)
    }),
  )
})

it('stays at the end for turns beyond it', () => {
  expect(coilPacks(sizes, 99)).toEqual(coilPacks(sizes, springCoils(sizes).turns))
  expect(coilPacks(sizes, -1)).toEqual(coilPacks(sizes, 0))
})

it('says nothing of a strip that cannot be got in', () => {
  expect(() => coilPacks({ ...sizes, springLengthMm: 900 }, 1)).toThrow(OutsideRange)
})

it('lays coils from the wall inwards and from the hub outwards, the last a part of a round', () => {
  const { wall, hub } = coilPacks(sizes, 4)
  for (const [pack, laid, first] of [
    [wall, 'inwards', 6 - 0.06],
    [hub, 'outwards', 2 + 0.06],
  ] as const) {
    const coils = coilsOf(pack, 0.12, laid)
    expect(coils[0]?.radiusMm).toBeCloseTo(first, 9)
    expect(coils.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(pack.coils, 9)
  }
  expect(coilsOf(coilPacks(sizes, 0).hub, 0.12, 'outwards')).toEqual([])
})
