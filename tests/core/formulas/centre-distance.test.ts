import fc from 'fast-check'
import { expect, it } from 'vitest'
import { centreDistance } from '../../../core/formulas/centre-distance.ts'

const count = fc.integer({ min: 5, max: 200 })

it('is half of both pitch diameters', () => {
  fc.assert(
    fc.property(count, count, fc.double({ min: 0.05, max: 10, noNaN: true }), (wheel, pinion, module) => {
      expect(centreDistance(module, wheel, pinion)).toBeCloseTo((module * wheel) / 2 + (module * pinion) / 2, 8)
    }),
  )
})

it('refuses a depth without module or counts', () => {
  expect(() => centreDistance(0, 80, 10)).toThrow('not-positive')
  expect(() => centreDistance(0.1, 80, 0)).toThrow('not-positive')
})
