import { expect, it } from 'vitest'
import { hasFourthArbor } from '../../../core/formulas/fourth-arbor.ts'

const clock = { centreWheel: 64, thirdPinion: 8, thirdWheel: 60, escapePinion: 8, escapeTeeth: 30 }

it('is there where either of its counts is stated', () => {
  expect(hasFourthArbor({ ...clock, fourthWheel: 70 })).toBe(true)
  expect(hasFourthArbor({ ...clock, fourthPinion: 7, beatRateVph: 3600 })).toBe(true)
})

it('is not there where the train gives the stated rate without it, to 0.3 %', () => {
  expect(hasFourthArbor({ ...clock, beatRateVph: 3600 })).toBe(false)
  expect(hasFourthArbor({ ...clock, beatRateVph: 3610 })).toBe(false)
  expect(hasFourthArbor({ ...clock, beatRateVph: 3612 })).toBeNull()
})

it('cannot be told without a rate or with a count missing', () => {
  expect(hasFourthArbor(clock)).toBeNull()
  expect(hasFourthArbor({ ...clock, beatRateVph: 18000 })).toBeNull()
  expect(hasFourthArbor({ beatRateVph: 3600, centreWheel: 64 })).toBeNull()
})
