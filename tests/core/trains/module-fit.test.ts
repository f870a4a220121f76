import { expect, test } from 'vitest'
import type { CaliberValues, Depth } from '../../../core/record/caliber.ts'
import { moduleMisfit } from '../../../core/trains/module-fit.ts'
import { caliberOf } from '../../support/caliber-of.ts'

const train = {
  centreWheel: 80,
  thirdPinion: 10,
  thirdWheel: 75,
  fourthPinion: 10,
  fourthWheel: 80,
  escapePinion: 8,
} as const satisfies CaliberValues
// Modules 0.125, 0.115 and 0.100 (constructed; D).
const centre: Depth = { driver: 'centre wheel', driven: 'third pinion', driverPitchMm: 10 }
const third: Depth = { driver: 'third wheel', driven: 'fourth pinion', centreDistanceMm: 4.888 }
const fourth: Depth = { driver: 'fourth wheel', driven: 'escape pinion', drivenPitchMm: 0.8 }
const misfit = (values: CaliberValues, ...depths: readonly Depth[]) =>
  moduleMisfit(values, { ...caliberOf({}).lists, depths }, new Set(['thirdWheel', 'fourthPinion']))

test('a module between those of its neighbours fits, one above or below does not', () => {
  expect(misfit(train, centre, third, fourth)).toBe(0)
  expect(misfit({ ...train, thirdWheel: 60, fourthPinion: 8 }, fourth, third, centre)).toBeCloseTo(
    0.14376 / 0.1275 - 1,
    3,
  )
  expect(misfit({ ...train, thirdWheel: 90, fourthPinion: 12 }, centre, third, fourth)).toBeCloseTo(
    0.09804 / 0.09584 - 1,
    3,
  )
})

test('with one neighbour measured the module may part from it by some, with none by anything', () => {
  expect(misfit(train, centre, third)).toBe(0)
  expect(misfit({ ...train, thirdWheel: 120, fourthPinion: 16 }, centre, third)).toBeGreaterThan(0)
  expect(misfit({ ...train, thirdWheel: 120, fourthPinion: 16 }, third)).toBe(0)
})

test('depths of the motion work, and those without a size or a count, say nothing', () => {
  const hands = { driver: 'minute pinion', driven: 'hour wheel', driverPitchMm: 1 }
  expect(misfit({ ...train, minutePinion: 10, hourWheel: 40 }, hands, third)).toBe(0)
  expect(misfit(train, { driver: 'centre wheel', driven: 'third pinion' }, third)).toBe(0)
  expect(misfit({ thirdWheel: 75 }, centre, third)).toBe(0)
})
