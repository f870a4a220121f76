import { expect, it } from 'vitest'
import { springBendsRoundArbor as proof } from '../../../core/proofs/spring-bends-round-arbor.ts'
import { caliberOf } from '../../support/caliber-of.ts'
import { caliberPrinted } from '../../support/caliber-printed.ts'
import { everyNeedIsNamed } from '../../support/every-need-is-named.ts'

const bent = (barrelArborMm: number, springThicknessMm: number) =>
  proof.judge(caliberOf({ barrelArborMm, springThicknessMm }))

it('agrees with a hub of 25 to 32 thicknesses, as watches have, and shows the strain', () => {
  for (const [hub, thickness] of [
    [2.5, 0.1],
    [4, 0.14],
    [3.2, 0.1],
  ] as const)
    expect(bent(hub, thickness)).toMatchObject({ outcome: 'agrees', reason: 'bend-usual', difference: 0 })
  expect(bent(3.2, 0.1)).toMatchObject({
    working: [
      { formula: '3.2 ÷ 0.1', gives: expect.closeTo(32, 9) },
      { formula: '100 × 0.1 ÷ (3.2 + 0.1)', gives: expect.closeTo(3.0303, 4) },
    ],
  })
})

it('doubts a sharp bend, and objects to one that no spring is made for', () => {
  expect(bent(3, 0.16)).toMatchObject({ outcome: 'doubtful', reason: 'bend-sharp', difference: -1.25 })
  expect(bent(5, 0.81)).toMatchObject({ outcome: 'disagrees', reason: 'bend-sharp' })
})

it('doubts a hub that is very thick for the spring, and never objects to it', () => {
  expect(bent(6, 0.1)).toMatchObject({ outcome: 'doubtful', reason: 'bend-wide', difference: expect.closeTo(10, 9) })
  expect(bent(150, 0.05)).toMatchObject({ outcome: 'doubtful' })
})

it.each([
  ['2,4', '0,12', 'agrees'],
  ['2.399', '0,12', 'doubtful'],
  ['1,8', '0,12', 'doubtful'],
  ['1.799', '0,12', 'disagrees'],
  ['5,5', '11/100', 'agrees'],
  ['5.501', '11/100', 'doubtful'],
])('meets its edges exactly: a hub of %s with a spring of %s %s', (barrelArborMm, springThicknessMm, outcome) => {
  expect(proof.judge(caliberPrinted({ barrelArborMm, springThicknessMm }))).toMatchObject({ outcome })
})

everyNeedIsNamed(proof, { barrelArborMm: 4, springThicknessMm: 0.14 }, ['barrelArborMm', 'springThicknessMm'])

it('decides an edge on the exact readings where both are printed in lignes', () => {
  // Two lignes over a tenth of one are twenty thicknesses, whatever a ligne is in binary millimetres.
  const judge = (barrelArborMm: string, springThicknessMm: string) =>
    proof.judge(caliberPrinted({ barrelArborMm, springThicknessMm }))
  expect(judge("2'''", "0.1'''")).toMatchObject({ outcome: 'agrees' })
  expect(judge("5'''", "0.1'''")).toMatchObject({ outcome: 'agrees' })
})
