import { expect, it } from 'vitest'
import { pairsOfUnits, sizeReading } from '../../../core/proofs/size-pairs.ts'
import { caliberOf } from '../../support/caliber-of.ts'
import { caliberPrinted } from '../../support/caliber-printed.ts'

const pairs = (diameterMm: readonly string[]) =>
  pairsOfUnits(caliberPrinted({ diameterMm }).readings).map(({ first, second }) => [first.printed, second.printed])

it('pairs readings in different measures, the chosen one first, and no others', () => {
  expect(pairs(["17'''"])).toEqual([])
  expect(pairs(['38.35', '38.4 mm', '3840/100'])).toEqual([])
  expect(pairs(["17'''", '204 dz'])).toEqual([])
  expect(pairs(["17'''", '38.35', '1.51 in'])).toEqual([
    ["17'''", '38.35'],
    ["17'''", '1.51 in'],
    ['38.35', '1.51 in'],
  ])
})

it('takes a value without a print as it stands', () => {
  expect(sizeReading(caliberOf({ lengthMm: 20 }), 'lengthMm')).toEqual({ printed: '20', value: 20, chosen: true })
  expect(sizeReading(caliberOf({}), 'lengthMm')).toBeUndefined()
  expect(sizeReading(caliberPrinted({ lengthMm: ["9'''", '20.3'] }), 'lengthMm')?.printed).toBe("9'''")
})

it('sets the chosen reading first, wherever it stands in the list', () => {
  const { readings } = caliberPrinted({ diameterMm: ["17'''", { printed: '38.35', chosen: true }, '1.51 in'] })
  expect(
    pairsOfUnits(readings)
      .map(({ first }) => first.printed)
      .slice(0, 2),
  ).toEqual(['38.35', '38.35'])
  const bare = pairsOfUnits(readings.diameterMm ? { diameterMm: readings.diameterMm.toReversed() } : {})
  expect(bare[0]?.first.printed).toBe('38.35')
})
