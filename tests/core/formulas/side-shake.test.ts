import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { OutsideRange } from '../../../core/formulas/outside-range.ts'
import { sideShake, sideShakeBetween } from '../../../core/formulas/side-shake.ts'

describe('side-shake', () => {
  test('is the hole less the pivot, without the noise of binary sums', () => {
    expect(sideShake(0.128, 0.11)).toBe(0.018)
    expect(sideShake(0.3, 0.285)).toBe(0.015)
  })

  test('is nothing where both are alike', () => {
    expect(sideShake(0.11, 0.11)).toBe(0)
  })

  test('refuses a pivot larger than its hole, with both sizes', () => {
    expect(() => sideShake(0.11, 0.12)).toThrow(
      expect.objectContaining({ code: 'pivot-fills-hole', details: { holeMm: 0.11, pivotMm: 0.12 } }),
    )
  })

  test.each([
    [0, 0.1, 'holeMm'],
    [0.1, 0, 'pivotMm'],
    [-1, 0.1, 'holeMm'],
    [0.1, Number.NaN, 'pivotMm'],
  ])('refuses a hole of %d and a pivot of %d', (hole, pivot, field) => {
    expect(() => sideShake(hole, pivot)).toThrow(OutsideRange)
    expect(() => sideShake(hole, pivot)).toThrow(
      expect.objectContaining({ details: expect.objectContaining({ field }) }),
    )
  })
})

describe('side-shake between limits', () => {
  const about = (value: number, off: number) => ({ value, low: value - off, high: value + off })

  test('both readings may be off the worst way', () => {
    expect(sideShakeBetween(about(0.128, 0.002), about(0.11, 0.001))).toEqual({ value: 0.018, low: 0.015, high: 0.021 })
  })

  test('a pivot in its hole never has less than no play', () => {
    expect(sideShakeBetween(about(0.112, 0.005), about(0.11, 0.005))).toEqual({ value: 0.002, low: 0, high: 0.012 })
  })

  test('refuses readings of which the pivot is the larger', () => {
    expect(() => sideShakeBetween(about(0.11, 0.05), about(0.12, 0.05))).toThrow(OutsideRange)
  })

  test('holds every play that a true hole and pivot within their readings can have', () => {
    const share = fc.double({ min: -1, max: 1, noNaN: true })
    fc.assert(
      fc.property(
        fc.integer({ min: 100, max: 5000 }),
        fc.integer({ min: 0, max: 50 }),
        fc.integer({ min: 0, max: 10 }),
        fc.integer({ min: 0, max: 10 }),
        share,
        share,
        (pivotUm, playUm, holeOffUm, pivotOffUm, holeShare, pivotShare) => {
          const pivot = about(pivotUm / 1000, pivotOffUm / 1000)
          const hole = about((pivotUm + playUm) / 1000, holeOffUm / 1000)
          const found = sideShakeBetween(hole, pivot)
          const trueHole = hole.value + (holeShare * holeOffUm) / 1000
          const truePivot = pivot.value + (pivotShare * pivotOffUm) / 1000
          const play = Math.max(0, trueHole - truePivot)
          expect(play).toBeGreaterThanOrEqual(found.low - 1e-9)
          expect(play).toBeLessThanOrEqual(found.high + 1e-9)
          expect(found.value).toBeGreaterThanOrEqual(found.low)
        },
      ),
    )
  })
})
