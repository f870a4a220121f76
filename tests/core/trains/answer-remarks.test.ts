import Fraction from 'fraction.js'
import { expect, test } from 'vitest'
import type { CaliberValues, Depth } from '../../../core/record/caliber.ts'
import { answerRemarks, isTrainPinion } from '../../../core/trains/answer-remarks.ts'
import type { CountKey } from '../../../core/trains/cuttable-counts.ts'
import { caliberOf } from '../../support/caliber-of.ts'

const train = {
  centreWheel: 80,
  thirdPinion: 10,
  thirdWheel: 75,
  fourthPinion: 10,
  fourthWheel: 80,
  escapePinion: 8,
  escapeTeeth: 15,
} as const satisfies CaliberValues

const remarks = (
  values: CaliberValues,
  keys: readonly CountKey[],
  more: { rate?: Fraction; fourthArbor?: boolean; depths?: readonly Depth[] } = {},
) => {
  const { rate = null, fourthArbor = true, depths = [] } = more
  const stated = { lists: { ...caliberOf({}).lists, depths }, values: { beatRateVph: 18000 } }
  return answerRemarks({ values, rate, fourthArbor }, stated, new Set(keys), true)
}

test('customary counts are passed over in silence', () => {
  expect(remarks(train, ['thirdWheel', 'fourthPinion'], { rate: new Fraction(18000) })).toEqual([])
})

test('counts outside the usual range, and leaves that are seldom cut, are remarked on', () => {
  expect(remarks({ ...train, thirdWheel: 150, fourthPinion: 9 }, ['thirdWheel', 'fourthPinion'])).toMatchObject([
    { code: 'unusual-count', key: 'thirdWheel', count: 150, usual: [45, 120] },
    { code: 'uncommon-leaves', key: 'fourthPinion', count: 9 },
    { code: 'steep-pair', driver: 'thirdWheel', driven: 'fourthPinion' },
  ])
  // A stated count is the maker's own affair.
  expect(remarks({ ...train, thirdWheel: 150 }, ['fourthWheel'])).toEqual([])
})

test('a rate that only rounds to the stated one is remarked on', () => {
  expect(remarks(train, ['thirdWheel'], { rate: new Fraction(90001, 5) })).toMatchObject([
    { code: 'rate-rounded', rate: 18000.2, stated: 18000 },
  ])
})

test('sizes are held against the counts, and a lone centre distance gives the module', () => {
  const pair = { driver: 'third wheel', driven: 'fourth pinion' }
  expect(remarks(train, ['thirdWheel'], { depths: [{ ...pair, driverPitchMm: 9, drivenPitchMm: 1.2 }] })).toEqual([])
  expect(
    remarks(train, ['thirdWheel'], { depths: [{ ...pair, driverPitchMm: 9.4, drivenPitchMm: 1.2 }] }),
  ).toMatchObject([{ code: 'sizes-differ', clear: false }])
  expect(remarks(train, ['thirdWheel'], { depths: [{ ...pair, centreDistanceMm: 5.1 }] })).toMatchObject([
    { code: 'module-by-distance', distanceMm: 5.1, moduleMm: 0.12 },
  ])
})

test('a train read without a fourth arbor says so', () => {
  const { fourthPinion: _, fourthWheel: __, ...two } = train
  expect(remarks(two, ['centreWheel'], { fourthArbor: false }).map(({ code }) => code)).toContain('no-fourth-arbor')
})

test('the pinions of the train are those with customary leaves', () => {
  expect(isTrainPinion('thirdPinion')).toBe(true)
  expect(isTrainPinion('minutePinion')).toBe(false)
  expect(isTrainPinion('thirdWheel')).toBe(false)
})
