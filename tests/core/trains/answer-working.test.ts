import { expect, test } from 'vitest'
import type { CaliberValues } from '../../../core/record/caliber.ts'
import { relationWorking } from '../../../core/trains/answer-working.ts'
import { trainRelations } from '../../../core/trains/train-relations.ts'
import { caliberOf } from '../../support/caliber-of.ts'

const train = {
  beatRateVph: 18000,
  secondsDisplay: 'small',
  centreWheel: 80,
  thirdPinion: 10,
  thirdWheel: 75,
  fourthPinion: 10,
  fourthWheel: 80,
  escapePinion: 8,
  escapeTeeth: 15,
} as const satisfies CaliberValues
const lines = (values: CaliberValues) =>
  trainRelations(caliberOf(values), [], true).flatMap((relation) => {
    const step = relationWorking(relation, values)
    return step === null ? [] : [`${step.formula} = ${step.gives}`]
  })

test('each relation is written as on paper', () => {
  expect(lines({ ...train, cannonPinion: 12, minuteWheel: 36, minutePinion: 10, hourWheel: 40 })).toEqual([
    '80/10 × 75/10 = 60',
    '80/10 × 75/10 × 80/8 × 2 × 15 = 18000',
    '36/12 × 40/10 = 12',
  ])
})

test('hours to a centre turn divide, and a fraction that no decimal holds stays one', () => {
  expect(lines({ ...train, hoursPerCentreTurn: 4 / 3 })).toEqual([
    '80/10 × 75/10 ÷ 1 1/3 = 45',
    '80/10 × 75/10 × 80/8 × 2 × 15 ÷ 1 1/3 = 13500',
  ])
  expect(lines({ ...train, escapePinion: 7 })[1]).toBe('80/10 × 75/10 × 80/7 × 2 × 15 = 20571 3/7')
})

test('from the seconds arbor the sixty turns come first', () => {
  const short = {
    beatRateVph: 18000,
    secondsDisplay: 'small',
    fourthWheel: 75,
    escapePinion: 8,
    escapeTeeth: 16,
  } as const
  expect(lines(short)).toEqual(['60 × 75/8 × 2 × 16 = 18000'])
})
