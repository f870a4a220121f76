import fc from 'fast-check'
import { expect, test } from 'vitest'
import { springCoils } from '../../../core/formulas/barrel.ts'
import { type CoilRing, coilRings } from '../../../renderer/drawings/coil-rings.ts'

const sizes = { barrelInsideMm: 11, barrelArborMm: 3.6, springThicknessMm: 0.12, springLengthMm: 355 }
const area = ({ inner, outer }: CoilRing) => Math.PI * (outer ** 2 - inner ** 2)

test('the strip keeps its area however far it is wound', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (wound) => {
      const { wall, hub } = coilRings(sizes, wound)
      expect(area(wall) + area(hub)).toBeCloseTo(355 * 0.12, 6)
    }),
  )
})

test('as many coils are drawn as the formula counts', () => {
  const { down, wound } = springCoils(sizes)
  expect(coilRings(sizes, 0).wall.coils).toHaveLength(Math.round(down))
  expect(coilRings(sizes, 0).hub.coils).toHaveLength(0)
  expect(coilRings(sizes, 1).hub.coils).toHaveLength(Math.round(wound))
})
