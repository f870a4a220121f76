import { expect, it } from 'vitest'
import { favouredReading } from '../../../core/proofs/favoured-reading.ts'
import { caliberPrinted, soundWatch } from '../../support/caliber-printed.ts'

it('favours the wheel count that gives the stated rate, chosen or not', () => {
  expect(favouredReading(caliberPrinted({ ...soundWatch, thirdWheel: ['57', '75'] }), 'thirdWheel')?.printed).toBe('75')
  expect(favouredReading(caliberPrinted({ ...soundWatch, thirdWheel: ['75', '57'] }), 'thirdWheel')?.printed).toBe('75')
})

it('decides nothing where the proofs find as much wrong with either', () => {
  expect(favouredReading(caliberPrinted({ ...soundWatch, jewelsStated: ['15', '16'] }), 'jewelsStated')).toBeNull()
  expect(favouredReading(caliberPrinted({ thirdWheel: ['57', '75'] }), 'thirdWheel')).toBeNull()
})

it('takes two prints of one value for one answer', () => {
  const caliber = caliberPrinted({ ...soundWatch, springThicknessMm: ['0,81', '0.18', '18/100'] })
  expect(favouredReading(caliber, 'springThicknessMm')?.value).toBeCloseTo(0.18)
})

it('has nothing to choose from a field without readings', () => {
  expect(favouredReading(caliberPrinted({}), 'thirdWheel')).toBeNull()
})
