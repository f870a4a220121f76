import Fraction from 'fraction.js'
import { expect, it } from 'vitest'
import { asPrinted, furthestApart, moduleOf } from '../../../core/trains/shared-module.ts'

const size = (name: string, value: string, modules: number, halfStep = 0) => ({
  name,
  printed: { value: Number(value), exact: new Fraction(value), unit: 'mm', halfStep } as const,
  modules,
})

it('finds the two sizes that lie furthest apart', () => {
  const pair = furthestApart([size('wheel', '8', 80), size('pinion', '1', 10), size('centres', '4.6', 45)])
  expect([pair?.first.name, pair?.second.name]).toEqual(['wheel', 'centres'])
  expect(pair?.gapMm).toBeCloseTo(0.1 / 45, 12)
})

it('finds no gap where two spans only touch', () => {
  expect(furthestApart([size('wheel', '8.62', 75, 0.005), size('pinion', '1.15', 10)])?.gapMm).toBe(0)
})

it('says nothing of a single size', () => {
  expect(furthestApart([size('wheel', '8', 80)])).toBeUndefined()
  expect(moduleOf({ name: 'wheel', printed: asPrinted(8), modules: 80 })).toBe(0.1)
})
