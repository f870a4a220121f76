import fc from 'fast-check'
import { expect, it } from 'vitest'
import { arborToThickness, surfaceStrain } from '../../../core/formulas/spring-bend.ts'

const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true })

it('strains the surface by one part in one more than the thicknesses of the hub', () => {
  fc.assert(
    fc.property(mm(0.3, 150), mm(0.02, 2), (hub, thickness) => {
      expect(surfaceStrain(hub, thickness)).toBeCloseTo(1 / (1 + arborToThickness(hub, thickness)), 12)
    }),
  )
})

it('refuses a hub or a thickness that is not above zero', () => {
  for (const formula of [arborToThickness, surfaceStrain]) {
    expect(() => formula(0, 0.1)).toThrow('not-positive')
    expect(() => formula(4, 0)).toThrow('not-positive')
    expect(() => formula(4, Number.NaN)).toThrow('not-positive')
  }
})
