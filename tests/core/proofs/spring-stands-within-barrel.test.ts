import Fraction from 'fraction.js'
import { expect, it } from 'vitest'
import { springStandsWithinBarrel as proof } from '../../../core/proofs/spring-stands-within-barrel.ts'
import { caliberOf } from '../../support/caliber-of.ts'
import { everyNeedIsNamed } from '../../support/every-need-is-named.ts'

it.each([
  [1.49, 1.5, 'disagrees', 'stands-proud'],
  [1.5, 1.5, 'doubtful', 'stands-close'],
  [1.2, 1.171, 'doubtful', 'stands-close'],
  [1.2, 1.17, 'agrees', 'stands-free'],
  [1.13, 1.1, 'agrees', 'stands-free'],
  [1.6, 1.5, 'agrees', 'stands-free'],
  [1.35, 1.1, 'agrees', 'stands-free'],
  [2.45, 2.2, 'agrees', 'stands-free'],
  [1.351, 1.1, 'doubtful', 'stands-loose'],
])(
  'a depth of %d over a height of %d %s, decided on the decimals as typed',
  (barrelDepthMm, springHeightMm, outcome, reason) => {
    expect(proof.judge(caliberOf({ barrelDepthMm, springHeightMm }))).toMatchObject({ outcome, reason })
  },
)

it('reports the play without binary noise', () => {
  const judgement = proof.judge(caliberOf({ barrelDepthMm: 1.6, springHeightMm: 1.5 }))
  expect(judgement).toMatchObject({ difference: 0.1, working: [{ formula: '1.6 − 1.5', gives: 0.1 }] })
})

it('decides an edge on the exact value of a reading, such as one in lignes', () => {
  const ligne = new Fraction(31250, 13853)
  const exact = ligne.mul(new Fraction(1, 2))
  const springHeightMm = exact.sub(new Fraction(3, 100)).valueOf()
  const quantity = { value: exact.valueOf(), exact, unit: 'ligne', halfStep: 0 } as const
  const height = { ...quantity, value: springHeightMm, exact: exact.sub(new Fraction(3, 100)) }
  const caliber = {
    ...caliberOf({ barrelDepthMm: exact.valueOf(), springHeightMm }),
    readings: {
      barrelDepthMm: [{ printed: "1/2'''", value: exact.valueOf(), quantity, chosen: true }],
      springHeightMm: [{ printed: '…', value: springHeightMm, quantity: height, chosen: true }],
    },
  }
  expect(proof.judge(caliber).outcome).toBe('agrees')
})

everyNeedIsNamed(proof, { barrelDepthMm: 1.6, springHeightMm: 1.5 }, ['barrelDepthMm', 'springHeightMm'])
