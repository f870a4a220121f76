import { expect, it } from 'vitest'
import { meanOfReadings } from '../../../core/springs/mean-of-readings.ts'

it('gives the mean, the spread, and no less than what the instrument leaves open', () => {
  expect(meanOfReadings([0.12, 0.122, 0.118], 0.001)).toEqual({ mean: 0.12, spread: 0.004, uncertaintyMm: 0.002 })
  expect(meanOfReadings([0.12, 0.121], 0.002)).toEqual({ mean: 0.1205, spread: 0.001, uncertaintyMm: 0.002 })
})

it('has no mean of no reading', () => {
  expect(meanOfReadings([], 0.002)).toBeNull()
})
