import { expect, it } from 'vitest'
import { handsFitInOrder as proof } from '../../../core/proofs/hands-fit-in-order.ts'
import type { CaliberValues } from '../../../core/record/caliber.ts'
import { caliberOf } from '../../support/caliber-of.ts'
import { caliberPrinted } from '../../support/caliber-printed.ts'
import { everyNeedIsNamed } from '../../support/every-need-is-named.ts'

const small: CaliberValues = { hourHandMm: 1.75, minuteHandMm: 1.05, secondsHandMm: 0.28, secondsDisplay: 'small' }
const centre: CaliberValues = { ...small, secondsDisplay: 'centre-direct' }
const judge = (values: CaliberValues) => proof.judge(caliberOf(values))
const printed = (hourHandMm: string, minuteHandMm: string, others: Readonly<Record<string, string>> = {}) =>
  proof.judge(caliberPrinted({ hourHandMm, minuteHandMm, ...others }))

it('agrees with each difference written out', () => {
  expect(judge(small)).toMatchObject({
    outcome: 'agrees',
    reason: 'hands-in-order',
    difference: 0.7,
    working: [
      { formula: '1.75 − 1.05', gives: 0.7 },
      { formula: '1.05 − 0.28', gives: 0.77 },
    ],
  })
})

it('disagrees where hour and minute hand have changed places, or have the same hole', () => {
  expect(judge({ ...small, hourHandMm: 1.05, minuteHandMm: 1.75 })).toMatchObject({
    outcome: 'disagrees',
    reason: 'hands-crossed',
    details: { outer: 'hourHandMm', inner: 'minuteHandMm' },
  })
  expect(judge({ ...small, hourHandMm: 1.05 })).toMatchObject({ outcome: 'disagrees', reason: 'hands-equal' })
})

it.each(['centre-direct', 'centre-indirect'] as const)(
  'holds the seconds hand to the order with %s seconds',
  (place) => {
    const values = { ...small, secondsDisplay: place }
    expect(judge(values).outcome).toBe('agrees')
    expect(judge({ ...values, secondsHandMm: 1.06 })).toMatchObject({
      outcome: 'disagrees',
      details: { outer: 'minuteHandMm', inner: 'secondsHandMm' },
    })
    expect(judge({ ...values, secondsHandMm: 1.05 })).toMatchObject({ outcome: 'disagrees', reason: 'hands-equal' })
  },
)

it('only remarks on a large hole of a seconds hand that stands by itself', () => {
  for (const secondsHandMm of [1.05, 1.2]) {
    expect(judge({ ...small, secondsHandMm })).toMatchObject({ outcome: 'doubtful', reason: 'seconds-hand-large' })
  }
  const { secondsDisplay: _, ...unknown } = small
  expect(judge({ ...unknown, secondsHandMm: 1.2 }).outcome).toBe('doubtful')
})

it('reports the graver of two findings', () => {
  expect(judge({ ...centre, hourHandMm: 1.05, secondsHandMm: 0.28 }).outcome).toBe('disagrees')
  expect(judge({ ...small, hourHandMm: 1.05, secondsHandMm: 1.2 })).toMatchObject({ reason: 'hands-equal' })
})

it.each([
  ['1.21', '1.20', 'doubtful'],
  ['1.22', '1.20', 'agrees'],
  ['1.3', '1.2', 'doubtful'],
  ['1.31', '1.20', 'agrees'],
  ['1.25', '1.2', 'doubtful'],
  ['1.250', '1.2', 'doubtful'],
  ['1.251', '1.2', 'agrees'],
  ['1.20', '1.2', 'disagrees'],
  ['1.20 ±0.01', '1.19 ±0.01', 'doubtful'],
  ['1.21 ±0.005', '1.19 ±0.01', 'agrees'],
])('an hour hole of %s over a minute hole of %s %s: half of the last digit on either side', (hour, minute, outcome) => {
  expect(printed(hour, minute).outcome).toBe(outcome)
})

it('takes holes in hundredths and in millimetres for what they are', () => {
  expect(printed('120/100', '1,20')).toMatchObject({ outcome: 'disagrees', reason: 'hands-equal' })
})

it('takes a hole that is given as a number for exact', () => {
  expect(judge({ hourHandMm: 1.2001, minuteHandMm: 1.2 }).outcome).toBe('agrees')
})

it('asks for the seconds hand only in the centre, and not where the others disagree already', () => {
  const { secondsHandMm: _, ...without } = centre
  expect(judge({ ...without, secondsDisplay: 'small' }).outcome).toBe('agrees')
  expect(judge({ ...without, hourHandMm: 1 }).outcome).toBe('disagrees')
})

everyNeedIsNamed(proof, small, ['hourHandMm', 'minuteHandMm'])
everyNeedIsNamed(proof, centre, ['hourHandMm', 'minuteHandMm', 'secondsHandMm'])

it('finds equal holes of hour and minute hand before it asks for a centre seconds hand', () => {
  const { secondsHandMm: _, ...without } = centre
  expect(judge({ ...without, hourHandMm: 1.05 })).toMatchObject({ outcome: 'disagrees', reason: 'hands-equal' })
})

it('says which holes it took from which, in full', () => {
  expect(judge(centre)).toEqual({
    outcome: 'agrees',
    stated: 1.05,
    found: 1.75,
    unit: 'mm',
    difference: 0.7,
    allowed: null,
    working: [
      { formula: '1.75 − 1.05', where: { hourHandMm: 1.75, minuteHandMm: 1.05 }, gives: 0.7 },
      { formula: '1.05 − 0.28', where: { minuteHandMm: 1.05, secondsHandMm: 0.28 }, gives: 0.77 },
    ],
    reason: 'hands-in-order',
    details: { outer: 'hourHandMm', inner: 'minuteHandMm' },
  })
})

it('names the hour hand first where both pairs are as bad', () => {
  expect(judge({ ...centre, hourHandMm: 1, secondsHandMm: 1.2 })).toMatchObject({
    reason: 'hands-crossed',
    details: { outer: 'hourHandMm' },
  })
})
