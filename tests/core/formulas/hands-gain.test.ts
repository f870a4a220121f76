import { expect, it } from 'vitest'
import { handsGain, rateOfTrain } from '../../../core/formulas/hands-gain.ts'

it('lets the hands lose where the train is cut for more than the balance beats, and gain where for less', () => {
  expect(handsGain(18000, 18000)).toBe(0)
  expect(handsGain(18000, 36000)).toBe(-43200)
  expect(handsGain(18000, 9000)).toBe(86400)
})

it('finds the train again from the gain', () => {
  expect(rateOfTrain(18000, handsGain(18000, 18240))).toBeCloseTo(18240, 9)
  expect(rateOfTrain(21600, 0)).toBe(21600)
})

it('refuses rates of nothing and hands that stand still', () => {
  const refusal = expect.objectContaining({ code: 'not-positive' })
  expect(() => handsGain(0, 18000)).toThrow(refusal)
  expect(() => handsGain(18000, 0)).toThrow(refusal)
  expect(() => rateOfTrain(0, 10)).toThrow(refusal)
  expect(() => rateOfTrain(18000, -86400)).toThrow(refusal)
})
