import { expect, test } from 'vitest'
import { depthPair } from '../../../core/trains/depth-pair.ts'

const pair = { driver: 'third wheel', driven: 'fourth pinion' }

test('any two of three sizes give the ratio of the counts', () => {
  // Module 0.12, 75/10: 9.00 and 1.20 mm, 5.10 mm apart (constructed; D).
  const sizes = [
    { driverPitchMm: 9, drivenPitchMm: 1.2 },
    { driverPitchMm: 9, centreDistanceMm: 5.1 },
    { drivenPitchMm: 1.2, centreDistanceMm: 5.1 },
  ]
  for (const each of sizes) expect(depthPair({ ...pair, ...each })?.ratio?.toFraction()).toBe('15/2')
})

test('one size, or sizes that cannot be, give none', () => {
  expect(depthPair({ ...pair, centreDistanceMm: 5.1 })).toEqual({
    driver: 'thirdWheel',
    driven: 'fourthPinion',
    ratio: null,
    centreDistanceMm: 5.1,
  })
  expect(depthPair({ ...pair, driverPitchMm: 9 })?.ratio).toBeNull()
  expect(depthPair({ ...pair, driverPitchMm: 9, centreDistanceMm: 4 })?.ratio).toBeNull()
})

test('a name that is not known is no pair', () => {
  expect(depthPair({ driver: 'calendar wheel', driven: 'fourth pinion' })).toBeNull()
  expect(depthPair({ driver: 'third wheel', driven: 'the next' })).toBeNull()
})
