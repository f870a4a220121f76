import { expect, it } from 'vitest'
import { lengthFromMass } from '../../../core/formulas/length-from-mass.ts'
import { OutsideRange } from '../../../core/formulas/outside-range.ts'

const strip = { heightMm: 1.5, thicknessMm: 0.1 }

it('finds the length of a steel strip from its weight, and of a denser alloy a shorter one', () => {
  expect(lengthFromMass(7.85 * 1.5 * 0.1 * 349.066, strip)).toBeCloseTo(349.066, 9)
  expect(lengthFromMass(8.4 * 1.5 * 0.1 * 349.066, strip, 8.4)).toBeCloseTo(349.066, 9)
})

it.each([
  [0, strip],
  [400, { ...strip, heightMm: 0 }],
  [400, { ...strip, thicknessMm: -1 }],
] as const)('refuses figures that are not above zero', (mass, sizes) => {
  expect(() => lengthFromMass(mass, sizes)).toThrow(OutsideRange)
  expect(() => lengthFromMass(400, strip, 0)).toThrow(OutsideRange)
})
