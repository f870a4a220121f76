import { expect, it } from 'vitest'
import { bestSpringLength } from '../../../core/formulas/barrel.ts'
import { springFillsBarrel as proof } from '../../../core/proofs/spring-fills-barrel.ts'
import { caliberOf } from '../../support/caliber-of.ts'
import { everyNeedIsNamed } from '../../support/every-need-is-named.ts'

const barrel = { barrelInsideMm: 12, barrelArborMm: 4, springThicknessMm: 0.12 }
const filled = (fill: number) => caliberOf({ ...barrel, springLengthMm: 2 * fill * bestSpringLength(barrel) })

it.each([
  [0.329, 'disagrees', 'fill-low'],
  [0.331, 'doubtful', 'fill-low'],
  [0.399, 'doubtful', 'fill-low'],
  [0.401, 'agrees', 'fill-usual'],
  [0.5, 'agrees', 'fill-usual'],
  [0.599, 'agrees', 'fill-usual'],
  [0.601, 'doubtful', 'fill-high'],
  [0.669, 'doubtful', 'fill-high'],
  [0.671, 'disagrees', 'fill-high'],
  [0.999, 'disagrees', 'fill-high'],
  [1.001, 'disagrees', 'fill-over'],
])('a fill of %d %s', (fill, outcome, reason) => {
  expect(proof.judge(filled(fill))).toMatchObject({ outcome, reason })
})

it('takes a slipping bridle off the barrel, and no other end', () => {
  const spring = { ...barrel, springLengthMm: 400, bridleThicknessMm: 0.5 }
  expect(proof.judge(caliberOf({ ...spring, springEnd: 'slipping-bridle' }))).toMatchObject({
    found: expect.closeTo(0.5822, 3),
  })
  expect(proof.judge(caliberOf({ ...spring, springEnd: 'tongue' }))).toMatchObject({
    found: expect.closeTo(0.47746, 4),
  })
})

everyNeedIsNamed(proof, { ...barrel, springLengthMm: 400 }, [
  'barrelInsideMm',
  'barrelArborMm',
  'springThicknessMm',
  'springLengthMm',
])
