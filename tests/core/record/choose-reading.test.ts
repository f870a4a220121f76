import { expect, it } from 'vitest'
import { chooseReading } from '../../../core/record/choose-reading.ts'
import { caliberPrinted } from '../../support/caliber-printed.ts'

it('chooses one reading, keeps the other and changes nothing else', () => {
  const caliber = caliberPrinted({ thirdWheel: ['57', '75'], centreWheel: '80' })
  const [, second] = caliber.readings.thirdWheel ?? []
  if (second === undefined) throw new Error('no second reading')
  const changed = chooseReading(caliber, 'thirdWheel', second)
  expect(changed.values).toEqual({ ...caliber.values, thirdWheel: 75 })
  expect(changed.readings.thirdWheel?.map(({ printed, chosen }) => [printed, chosen])).toEqual([
    ['75', true],
    ['57', false],
  ])
  expect(caliber.values.thirdWheel).toBe(57)
})

it('takes a reading that was not there before', () => {
  const changed = chooseReading(caliberPrinted({}), 'thirdWheel', { printed: '75', value: 75, chosen: true })
  expect(changed.values.thirdWheel).toBe(75)
})
