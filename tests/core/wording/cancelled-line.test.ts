import fc from 'fast-check'
import Fraction from 'fraction.js'
import { expect, test } from 'vitest'
import { cancelledLine } from '../../../core/wording/cancelled-line.ts'

const plainly = (text: string | null) => text?.replaceAll('\u202f', ' ') ?? null

test.each<[formula: string, gives: number | string, line: string | null, why: string]>([
  [
    '80/10 × 75/10 × 80/8 × 2 × 15',
    18000,
    '8 × 15/2 × 10 × 2 × 15 = 8 × 15 × 10 × 15 = 18 000',
    'what is left below goes against its equal above',
  ],
  ['80/10 × 57/10 × 80/8 × 2 × 15', 13680, '8 × 57/10 × 10 × 2 × 15 = 8 × 57 × 2 × 15 = 13 680', 'a misprinted wheel'],
  ['36/12 × 40/10', 12, '3 × 4 = 12', 'each fraction comes out whole'],
  ['80/10', 8, null, 'the result alone is not written twice'],
  ['64/7 × 50/9', '50 50/63', null, 'there is nothing to cancel'],
  ['80/10 × 75/10 ÷ 4/3', 45, '8 × 15/2 × 3/4 = 15 × 3 = 45', 'what is divided by is turned round'],
  ['72/12 × 60/8 ÷ 1 1/2', 30, '6 × 15/2 × 2/3 = 2 × 15 = 30', 'a whole number with a fraction is turned round too'],
])('%s gives %s, cancelled %s: %s', (formula, gives, line) => {
  expect(plainly(cancelledLine({ formula, gives }))).toBe(line)
})

test.each(['2 + 2', '7.5 × 6', '4 × 480 × 0.18 ÷ (π × (16² − 6²))', '8/0 × 2', '0/8 × 2', '18/100 mm × 2', 'six'])(
  'nothing is cancelled in %s',
  (formula) => {
    expect(cancelledLine({ formula, gives: 0 })).toBeNull()
  },
)

test('whatever is cancelled, every form is worth the same', () => {
  const count = fc.integer({ min: 1, max: 150 })
  const worth = (form: string) =>
    form.split(' × ').reduce((product, factor) => product.mul(new Fraction(factor)), new Fraction(1))
  fc.assert(
    fc.property(fc.array(fc.tuple(count, count), { minLength: 1, maxLength: 6 }), count, (pairs, last) => {
      const formula = `${pairs.map((pair) => pair.join('/')).join(' × ')} × ${last}`
      const forms = cancelledLine({ formula, gives: 'x' })?.split(' = ').slice(0, -1) ?? []
      for (const form of forms) expect(worth(form).equals(worth(formula)), `${formula} = ${form}`).toBe(true)
      const final = forms.at(-1)
      if (final === undefined) return
      const below = final.split(' × ').map((factor) => Number(factor.split('/')[1] ?? 1))
      const above = final.split(' × ').map((factor) => Number(factor.split('/')[0]))
      const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b))
      const common = below.some((under) => above.some((over) => gcd(over, under) > 1))
      // What is still common goes in the last step, of which the result alone is left.
      if (common) expect(cancelledLine({ formula: final, gives: 'x' }), final).toBeNull()
    }),
  )
})
