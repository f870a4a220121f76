import { expect, test } from 'vitest'
import { cuttableRanges, tryReading } from '../../../core/trains/missing-question.ts'
import { caliberOf } from '../../support/caliber-of.ts'

const rest = {
  beatRateVph: 18000,
  centreWheel: 80,
  thirdPinion: 10,
  fourthPinion: 10,
  fourthWheel: 80,
  escapePinion: 8,
  escapeTeeth: 15,
} as const

test('what nothing binds is set apart, and the rest is searched', () => {
  const { question, found } = tryReading(caliberOf(rest), ['thirdWheel', 'barrelTeeth', 'hourWheel'], true)
  expect(question.unknown).toEqual(['thirdWheel'])
  expect(question.unbound).toEqual([
    { key: 'barrelTeeth', waitsFor: [] },
    { key: 'hourWheel', waitsFor: ['minuteWheel', 'cannonPinion', 'minutePinion'] },
  ])
  expect(found).toEqual({ answers: [{ thirdWheel: 75 }], complete: true })
})

test('with nothing bound there is nothing to find', () => {
  expect(tryReading(caliberOf(rest), ['barrelTeeth'], true).found).toEqual({ answers: [], complete: true })
})

test('sizes that leave nothing are set aside where something else binds the counts', () => {
  const depths = [{ driver: 'third wheel', driven: 'fourth pinion', driverPitchMm: 5, drivenPitchMm: 1 }]
  const { values, readings, lists } = caliberOf(rest)
  const { question, found } = tryReading({ values, readings, lists: { ...lists, depths } }, ['thirdWheel'], true)
  expect(found.answers).toEqual([{ thirdWheel: 75 }])
  expect(question.relations.map(({ statement }) => statement)).toEqual(['rate'])
})

test('every count is looked for in its cuttable range', () => {
  expect(cuttableRanges(['escapePinion'])).toEqual([{ key: 'escapePinion', range: [5, 24] }])
})
