import { expect, it } from 'vitest'
import type { CaliberFieldKey } from '../../../core/fields/caliber-fields.ts'
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

it('favours what agrees over what is doubtful, wrong or cannot be', () => {
  const favoured = (key: CaliberFieldKey, prints: readonly string[], more: Readonly<Record<string, string>> = {}) =>
    favouredReading(caliberPrinted({ ...soundWatch, ...more, [key]: prints }), key)?.printed
  expect(favoured('liftAngleDeg', ['56', '52'], { escapement: 'lever' })).toBe('52')
  expect(favoured('minuteWheel', ['38', '36'])).toBe('36')
})

it('favours a value with a doubt over one that is wrong', () => {
  // 60° is a large lift angle; beyond it nothing is known.
  const caliber = caliberPrinted({ escapement: 'lever', liftAngleDeg: ['72', '60'] })
  expect(favouredReading(caliber, 'liftAngleDeg')?.printed).toBe('60')
})

it('favours what the barrel has room for over what it has not', () => {
  // Twice 2.5 mm of bridle leave nothing of a barrel of 5; twice 0.05 leave a spring that takes half of the room.
  const barrel = { barrelInsideMm: '5', barrelArborMm: '1,7', springThicknessMm: '0,06', springLengthMm: '138' }
  const caliber = caliberPrinted({ ...barrel, springEnd: 'slipping bridle', bridleThicknessMm: ['2,5', '0,05'] })
  expect(favouredReading(caliber, 'bridleThicknessMm')?.printed).toBe('0,05')
})
