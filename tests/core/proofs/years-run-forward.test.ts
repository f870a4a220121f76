import { expect, it } from 'vitest'
import { yearsRunForward as proof } from '../../../core/proofs/years-run-forward.ts'
import { caliberOf } from '../../support/caliber-of.ts'
import { caliberPrinted } from '../../support/caliber-printed.ts'
import { everyNeedIsNamed } from '../../support/every-need-is-named.ts'

it('agrees where the first year comes before the last, with the years between them', () => {
  expect(proof.judge(caliberOf({ firstYear: 1926, lastYear: 1938 }))).toMatchObject({
    outcome: 'agrees',
    difference: 12,
    working: [{ formula: '1938 − 1926', gives: 12 }],
  })
})

it('disagrees where two digits have changed places', () => {
  expect(proof.judge(caliberOf({ firstYear: 1962, lastYear: 1938 }))).toMatchObject({
    outcome: 'disagrees',
    reason: 'years-backward',
    difference: -24,
  })
})

it.each([
  [1938, 1938, 'agrees'],
  [1939, 1938, 'disagrees'],
])('from %d to %d %s: nothing is allowed on firm years', (firstYear, lastYear, outcome) => {
  expect(proof.judge(caliberOf({ firstYear, lastYear })).outcome).toBe(outcome)
})

it.each([
  ['c. 1943', '1938', 'doubtful'],
  ['c. 1944', '1938', 'disagrees'],
  ['1943', 'c. 1938', 'doubtful'],
  ['c. 1948', 'c. 1938', 'doubtful'],
  ['c. 1949', 'c. 1938', 'disagrees'],
  ['c. 1938', 'c. 1938', 'agrees'],
])('from %s to %s %s: five years for each that is uncertain', (firstYear, lastYear, outcome) => {
  expect(proof.judge(caliberPrinted({ firstYear, lastYear })).outcome).toBe(outcome)
})

everyNeedIsNamed(proof, { firstYear: 1926, lastYear: 1938 }, ['firstYear', 'lastYear'])

it('says in full what the years are, and allows nothing where they run forward', () => {
  const found = { stated: 1926, found: 1938, unit: 'years', difference: 12 }
  expect(proof.judge(caliberOf({ firstYear: 1926, lastYear: 1938 }))).toEqual({
    ...found,
    outcome: 'agrees',
    allowed: null,
    working: [{ formula: '1938 − 1926', where: { firstYear: 1926, lastYear: 1938 }, gives: 12 }],
    reason: 'years-forward',
  })
  expect(proof.judge(caliberPrinted({ firstYear: 'c. 1943', lastYear: '1938' }))).toMatchObject({
    difference: -5,
    allowed: 5,
    reason: 'years-uncertain',
  })
})
