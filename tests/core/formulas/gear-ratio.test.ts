import fc from 'fast-check'
import { expect, it } from 'vitest'
import { gearRatio } from '../../../core/formulas/gear-ratio.ts'

it('multiplies wheels and divides by pinions exactly', () => {
  expect(gearRatio([55, 45], [7, 6]).toFraction()).toBe('825/14')
  expect(gearRatio([], []).toFraction()).toBe('1')
})

it('stays exact where the product is too large for a plain number', () => {
  const many = Array.from({ length: 12 }, () => 397)
  expect(gearRatio([...many, 7], many).toFraction()).toBe('7')
})

it('does not depend on the order of the pairs', () => {
  const count = fc.integer({ min: 3, max: 400 })
  fc.assert(
    fc.property(fc.array(count, { maxLength: 6 }), fc.array(count, { maxLength: 6 }), (wheels, pinions) => {
      const turned = gearRatio(wheels.toReversed(), pinions.toReversed())
      expect(gearRatio(wheels, pinions).equals(turned)).toBe(true)
      expect(turned.mul(gearRatio(pinions, wheels)).toFraction()).toBe('1')
    }),
  )
})
