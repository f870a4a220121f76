import { expect, test } from 'vitest'
import type { CaliberValues } from '../../../core/record/caliber.ts'
import { type CountKey, cuttable } from '../../../core/trains/cuttable-counts.ts'
import { nearestAnswers } from '../../../core/trains/nearest-answers.ts'
import { trainRelations } from '../../../core/trains/train-relations.ts'
import { caliberOf } from '../../support/caliber-of.ts'

const nearest = (values: CaliberValues, ...unknown: CountKey[]) =>
  nearestAnswers(
    values,
    unknown.map((key) => ({ key, range: cuttable(key) ?? [0, 0] })),
    trainRelations(caliberOf(values), unknown, true),
  )
const sixteen = {
  beatRateVph: 18000,
  secondsDisplay: 'small',
  centreWheel: 64,
  thirdPinion: 8,
  thirdWheel: 60,
  fourthPinion: 8,
  escapePinion: 7,
  escapeTeeth: 16,
} as const satisfies CaliberValues

test('the counts on either side come with their error in seconds a day', () => {
  const found = nearest(sixteen, 'fourthWheel')
  expect(found.map(({ counts, rate }) => [counts.fourthWheel, rate?.toFraction()])).toEqual([
    [66, '126720/7'],
    [65, '124800/7'],
  ])
  expect(found[0]?.rateErrorSecondsPerDay).toBeCloseTo(493.714, 3)
  expect(found[1]?.rateErrorSecondsPerDay).toBeCloseTo(-822.857, 3)
  expect(found[0]).toMatchObject({ secondsHandErrorSecondsPerDay: null, hourHandTurns: null })
})

test('the seconds hand is kept exact where that can be done', () => {
  const { fourthPinion: _, ...rest } = sixteen
  const found = nearest({ ...rest, thirdWheel: 60 }, 'fourthPinion', 'fourthWheel')
  expect(found.length).toBeGreaterThan(0)
  for (const { counts, secondsHandErrorSecondsPerDay } of found) {
    expect(counts.fourthPinion).toBe(8)
    expect(secondsHandErrorSecondsPerDay).toBe(0)
  }
})

test('where it cannot, the error of the hand is told too', () => {
  const found = nearest({ ...sixteen, thirdWheel: 61, fourthWheel: 66 }, 'centreWheel')
  expect(found.length).toBeGreaterThan(0)
  expect(found.length).toBeLessThanOrEqual(5)
  for (const { secondsHandErrorSecondsPerDay } of found) expect(secondsHandErrorSecondsPerDay).not.toBe(0)
})

test('a motion work that cannot be exact tells its ratio', () => {
  const found = nearest({ cannonPinion: 11, minuteWheel: 35, minutePinion: 10 }, 'hourWheel')
  expect(found[0]?.counts).toEqual({ hourWheel: 38 })
  expect(found[0]?.hourHandTurns?.toFraction()).toBe('133/11')
  expect(found[0]?.rateErrorSecondsPerDay).toBeNull()
})

test('there is none where nothing cuttable comes anywhere near', () => {
  expect(nearest({ ...sixteen, beatRateVph: 1_000_000 }, 'fourthWheel')).toEqual([])
})
