import fc from 'fast-check'
import Fraction from 'fraction.js'
import { expect, test } from 'vitest'
import { type ProductRule, type SearchRange, wholeNumberAnswers } from '../../../core/trains/whole-number-search.ts'

type Key = 'a' | 'b' | 'c'
const keys: readonly Key[] = ['a', 'b', 'c']

/** Every number of every range tried, with fractions and nothing else. */
const bruteForce = (unknowns: readonly SearchRange<Key>[], rules: readonly ProductRule<Key>[]) => {
  let all: Record<string, number>[] = [{}]
  for (const { key, range } of unknowns)
    all = all.flatMap((so) =>
      Array.from({ length: range[1] - range[0] + 1 }, (_, i) => ({ ...so, [key]: range[0] + i })),
    )
  return all.filter((counts) =>
    rules.every(({ above, below, low, high }) => {
      const product = (of: readonly Key[]) => of.reduce((so, key) => so.mul(counts[key] ?? 1), new Fraction(1))
      const value = product(above).div(product(below))
      return value.compare(low) >= 0 && value.compare(high) <= 0
    }),
  )
}

const range = fc
  .tuple(fc.integer({ min: 1, max: 14 }), fc.integer({ min: 0, max: 11 }))
  .map(([low, more]): readonly [number, number] => [low, low + more])
const bounds = fc
  .tuple(fc.integer({ min: 1, max: 900 }), fc.integer({ min: 1, max: 40 }), fc.constantFrom(0, 0.00003, 0.01, 0.3))
  .map(([above, below, share]) => {
    const middle = new Fraction(above, below)
    return { low: middle.mul(1 - share), high: middle.mul(1 + share) }
  })
const sides = fc.array(fc.constantFrom('above', 'below', 'none'), { minLength: 3, maxLength: 3 })

test.each([1, 2, 3])('of %i unknowns it finds what trying every number finds, no more and no less', (count) => {
  const unknownKeys = keys.slice(0, count)
  const rule = fc.tuple(sides, bounds).map(
    ([where, { low, high }]): ProductRule<Key> => ({
      above: unknownKeys.filter((_, i) => where[i] === 'above'),
      below: unknownKeys.filter((_, i) => where[i] === 'below'),
      low,
      high,
    }),
  )
  fc.assert(
    fc.property(
      fc.array(range, { minLength: count, maxLength: count }),
      fc.array(rule, { minLength: 1, maxLength: 3 }),
      (ranges, rules) => {
        const unknowns = unknownKeys.map((key, i): SearchRange<Key> => ({ key, range: ranges[i] ?? [1, 1] }))
        const { answers, complete } = wholeNumberAnswers(unknowns, rules)
        expect(complete).toBe(true)
        expect(answers).toEqual(bruteForce(unknowns, rules))
      },
    ),
    { numRuns: 300 },
  )
})

test('a rule met to the last digit is met, and one missed by it is missed', () => {
  const unknowns: SearchRange<Key>[] = [{ key: 'a', range: [1, 400] }]
  const big = 10n ** 30n
  const just = {
    above: ['a'] as const,
    below: [],
    low: new Fraction(75n * big, big),
    high: new Fraction(75n * big, big),
  }
  expect(wholeNumberAnswers(unknowns, [just]).answers).toEqual([{ a: 75 }])
  const missed = { ...just, low: new Fraction(75n * big + 1n, big), high: new Fraction(75n * big + 1n, big) }
  expect(wholeNumberAnswers(unknowns, [missed]).answers).toEqual([])
})

test('a search that would take too long, or find too much, says that it is not complete', () => {
  const unknowns = keys.map((key): SearchRange<Key> => ({ key, range: [1, 100] }))
  const loose: ProductRule<Key> = { above: keys, below: [], low: new Fraction(1), high: new Fraction(1e6) }
  const few = wholeNumberAnswers(unknowns, [loose], { mostTried: 1e6, mostAnswers: 10 })
  expect(few.complete).toBe(false)
  expect(few.answers).toHaveLength(10)
  expect(wholeNumberAnswers(unknowns, [loose], { mostTried: 50, mostAnswers: 1e6 }).complete).toBe(false)
})
