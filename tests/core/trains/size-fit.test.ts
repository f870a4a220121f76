import { expect, test } from 'vitest'
import { clearSizeShare, fittingSizeShare, sizeFit } from '../../../core/trains/size-fit.ts'
import { caliberOf } from '../../support/caliber-of.ts'

const lists = (driverPitchMm: number) => ({
  ...caliberOf({}).lists,
  depths: [{ driver: 'third wheel', driven: 'fourth pinion', driverPitchMm, drivenPitchMm: 1.2 }],
})

test('the share is how much greater the ratio of the sizes is than that of the counts', () => {
  const counts = { thirdWheel: 75, fourthPinion: 10 }
  const [fit] = sizeFit(counts, lists(9), new Set(['thirdWheel']))
  expect(fit).toMatchObject({ driver: 'thirdWheel', driven: 'fourthPinion' })
  expect(fit?.share).toBeCloseTo(0, 12)
  expect(sizeFit(counts, lists(9.9), new Set(['fourthPinion']))[0]?.share).toBeCloseTo(0.1, 9)
})

test('a depth that speaks of no unknown count, or lacks one, is left alone', () => {
  expect(sizeFit({ thirdWheel: 75, fourthPinion: 10 }, lists(9), new Set(['escapePinion']))).toEqual([])
  expect(sizeFit({ thirdWheel: 75 }, lists(9), new Set(['thirdWheel']))).toEqual([])
})

test('what fits is narrower than what is clear, and one leaf of sixteen is clear', () => {
  expect(fittingSizeShare).toBeLessThan(clearSizeShare)
  expect(1 / 16).toBeGreaterThan(clearSizeShare)
})
