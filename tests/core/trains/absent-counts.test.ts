import { expect, test } from 'vitest'
import { absentCounts, arborGuesses } from '../../../core/trains/absent-counts.ts'

const train = {
  beatRateVph: 18000,
  centreWheel: 80,
  thirdPinion: 10,
  thirdWheel: 75,
  fourthPinion: 10,
  fourthWheel: 80,
  escapePinion: 8,
  escapeTeeth: 15,
}

test('of a train what is not stated is absent, with or without a fourth arbor', () => {
  expect(absentCounts(train, true)).toEqual([])
  const { thirdWheel: _, escapeTeeth: __, ...rest } = train
  expect(absentCounts(rest, true)).toEqual(['thirdWheel', 'escapeTeeth'])
  expect(absentCounts({ beatRateVph: 3600, centreWheel: 64, thirdPinion: 8, thirdWheel: 60 }, false)).toEqual([
    'escapePinion',
    'escapeTeeth',
  ])
  expect(absentCounts({ ...train, fifthPinion: 8 }, true)).toEqual(['fifthWheel'])
})

test('without a rate and without a single count of the train, nothing of it is looked for', () => {
  expect(absentCounts({}, true)).toEqual([])
  expect(absentCounts({ beatRateVph: 18000 }, true)).toHaveLength(7)
})

test('a motion work is looked for once it is begun', () => {
  expect(absentCounts({ cannonPinion: 12 }, true)).toEqual(['minuteWheel', 'minutePinion', 'hourWheel'])
})

test('a sweep pair is looked for once it is begun, or where nothing else is missing', () => {
  const sweep = { ...train, secondsDisplay: 'centre-indirect' } as const
  expect(absentCounts(sweep, true)).toEqual(['sweepDriver', 'sweepPinion'])
  const { thirdWheel: _, ...rest } = sweep
  expect(absentCounts(rest, true)).toEqual(['thirdWheel'])
  expect(absentCounts({ ...rest, sweepPinion: 8 }, true)).toEqual(['thirdWheel', 'sweepDriver'])
})

test('whether there is a fourth arbor is guessed only where nothing is known of it', () => {
  expect(arborGuesses(train, [])).toEqual([true])
  expect(arborGuesses({ beatRateVph: 5400, thirdWheel: 72 }, ['centreWheel'])).toEqual([false, true])
  expect(arborGuesses({ beatRateVph: 5400 }, ['fourthWheel'])).toEqual([true])
  const clock = { beatRateVph: 3600, centreWheel: 64, thirdPinion: 8, thirdWheel: 60, escapePinion: 8, escapeTeeth: 30 }
  expect(arborGuesses(clock, [])).toEqual([false])
})
