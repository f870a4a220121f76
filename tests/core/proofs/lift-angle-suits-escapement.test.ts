import { expect, it } from 'vitest'
import { liftAngleSuitsEscapement as proof } from '../../../core/proofs/lift-angle-suits-escapement.ts'
import type { CaliberValues } from '../../../core/record/caliber.ts'
import { reportFinding } from '../../../core/wording/proof-report.ts'
import { caliberOf } from '../../support/caliber-of.ts'
import { caliberPrinted } from '../../support/caliber-printed.ts'
import { everyNeedIsNamed } from '../../support/every-need-is-named.ts'

const lever: CaliberValues = { escapement: 'lever', liftAngleDeg: 52 }
const judge = (values: CaliberValues) => proof.judge(caliberOf({ ...lever, ...values }))

it('agrees with the room to the nearer end of the range', () => {
  expect(judge({})).toMatchObject({
    outcome: 'agrees',
    difference: 0,
    working: [{ formula: '54 − 52', gives: 2 }],
  })
  expect(judge({ liftAngleDeg: 40 })).toMatchObject({ working: [{ formula: '40 − 38', gives: 2 }] })
})

it('disagrees far outside, with how far', () => {
  expect(judge({ liftAngleDeg: 22 })).toMatchObject({ outcome: 'disagrees', reason: 'lift-beyond', difference: -16 })
  expect(judge({ liftAngleDeg: 72 })).toMatchObject({ outcome: 'disagrees', reason: 'lift-beyond', difference: 18 })
})

it.each([
  ['38', 'agrees'],
  ['37.9', 'doubtful'],
  ['54', 'agrees'],
  ['54.1', 'doubtful'],
  ['24', 'doubtful'],
  ['23.9', 'disagrees'],
  ['60', 'doubtful'],
  ['60.1', 'disagrees'],
])('a lever of no known year with %s° %s', (liftAngleDeg, outcome) => {
  expect(proof.judge(caliberPrinted({ escapement: 'lever', liftAngleDeg })).outcome).toBe(outcome)
})

it.each([
  [30, 1910, 'agrees'],
  [30, 1911, 'doubtful'],
  [24, 1890, 'agrees'],
  [23.9, 1890, 'disagrees'],
  [55, 1890, 'doubtful'],
])('a lever with %d° of %d %s: books up to 1910 print 24 to 50°', (liftAngleDeg, firstYear, outcome) => {
  expect(judge({ liftAngleDeg, firstYear }).outcome).toBe(outcome)
})

it.each(['pin-lever', 'cylinder', 'duplex', 'detent', 'verge', 'other'] as const)(
  'says nothing of a %s, for want of a figure in print',
  (escapement) => {
    expect(judge({ escapement })).toEqual({
      outcome: 'cannot-check',
      missing: [],
      reason: 'no-usual-lift',
      details: { escapement, liftAngleDeg: 52 },
    })
  },
)

it('reports that as neither doubted nor waiting for a field', () => {
  const caliber = caliberOf({ ...lever, escapement: 'verge', liftAngleDeg: 40 })
  expect(reportFinding({ proof, judgement: proof.judge(caliber) }, caliber)).toMatchObject({
    outcome: 'cannot-check',
    severity: 'none',
    missing: [],
    message: expect.stringMatching(/^What lift angle is usual .* 40° are neither confirmed nor doubted\.$/),
  })
})

everyNeedIsNamed(proof, lever, ['escapement', 'liftAngleDeg'])

it('measures an old lever against what books of its day print', () => {
  expect(judge({ liftAngleDeg: 30, firstYear: 1890 })).toEqual({
    outcome: 'agrees',
    stated: 30,
    found: null,
    unit: 'deg',
    difference: 0,
    allowed: 0,
    working: [{ formula: '30 − 24', where: { liftAngleDeg: 30, least: 24, most: 50 }, gives: 6 }],
    reason: 'lift-as-of-old',
    details: { least: 24, most: 50, lastPrintYear: 1910 },
  })
  expect(judge({ liftAngleDeg: 30 })).toMatchObject({ reason: 'lift-small', details: { least: 38, most: 54 } })
})
