import { expect, test } from 'vitest'
import { boundBy, relationGives, searchRule, trainRelations } from '../../../core/trains/train-relations.ts'
import { caliberOf } from '../../support/caliber-of.ts'

const train = {
  beatRateVph: 18000,
  secondsDisplay: 'small',
  centreWheel: 80,
  thirdPinion: 10,
  thirdWheel: 75,
  fourthPinion: 10,
  fourthWheel: 80,
  escapePinion: 8,
  escapeTeeth: 15,
} as const
const named = (values: Parameters<typeof caliberOf>[0], statement: string, fourthArbor = true) => {
  const found = trainRelations(caliberOf(values), [], fourthArbor).find((relation) => relation.statement === statement)
  if (found === undefined) throw new Error(`no relation ${statement}`)
  return found
}

test('the rate stands with half a vibration, the seconds hand exactly', () => {
  const rate = named(train, 'rate')
  expect(relationGives(rate, train)?.toFraction()).toBe('18000')
  expect([rate.low.valueOf(), rate.high.valueOf()]).toEqual([17999.5, 18000.5])
  const seconds = named(train, 'seconds')
  expect(relationGives(seconds, train)?.toFraction()).toBe('60')
  expect(seconds.low.equals(seconds.high)).toBe(true)
})

test('a centre arbor that does not turn once an hour slows both', () => {
  expect(relationGives(named({ ...train, hoursPerCentreTurn: 4 / 3 }, 'rate'), train)?.toFraction()).toBe('13500')
  expect(relationGives(named({ ...train, hoursPerCentreTurn: 4 / 3 }, 'seconds'), train)?.toFraction()).toBe('45')
})

test('where the counts before the seconds arbor are not known the rate is taken from it', () => {
  const short = {
    beatRateVph: 18000,
    secondsDisplay: 'small',
    fourthWheel: 75,
    escapePinion: 8,
    escapeTeeth: 16,
  } as const
  const rate = named(short, 'rate')
  expect(rate).toMatchObject({ above: ['fourthWheel', 'escapeTeeth'], below: ['escapePinion'], fromSeconds: true })
  expect(relationGives(rate, short)?.toFraction()).toBe('18000')
  expect(rate.lacking).toEqual([])
  expect(named(short, 'seconds').lacking).toEqual(['centreWheel', 'thirdWheel', 'thirdPinion', 'fourthPinion'])
})

test('an indirect seconds hand stands by the centre pair and its own', () => {
  const sweep = { ...train, secondsDisplay: 'centre-indirect', sweepDriver: 60, sweepPinion: 8 } as const
  expect(relationGives(named(sweep, 'seconds'), sweep)?.toFraction()).toBe('60')
})

test('a motion work is 12 to one, 24 with a 24-hour dial', () => {
  expect(named({}, 'hour-hand').stated?.toFraction()).toBe('12')
  expect(named({ dialHours: '24' }, 'hour-hand').stated?.toFraction()).toBe('24')
})

test('without a rate its relation says so', () => {
  const { beatRateVph: _, ...rest } = train
  expect(named(rest, 'rate').lacking).toEqual(['beatRateVph'])
})

test('without a fourth arbor no pair may be steeper than any in print', () => {
  const steep = trainRelations(caliberOf({}), [], false).filter(({ statement }) => statement === 'steepness')
  expect(steep.map(({ above, high }) => [above[0], high.valueOf()])).toEqual([
    ['centreWheel', 20],
    ['thirdWheel', 20],
  ])
})

test('sizes bind a pair to within what is clear', () => {
  const depths = [{ driver: 'third wheel', driven: 'fourth pinion', driverPitchMm: 9, drivenPitchMm: 1.2 }]
  const { values, readings, lists } = caliberOf(train)
  const sizes = trainRelations({ values, readings, lists: { ...lists, depths } }, [], true).find(
    ({ statement }) => statement === 'sizes',
  )
  expect(sizes?.low.valueOf()).toBeCloseTo(7.05, 9)
  expect(sizes?.high.valueOf()).toBeCloseTo(7.95, 9)
})

test('known counts go into the bounds of the search', () => {
  const { thirdWheel: _, ...rest } = train
  const unknown = new Set(['thirdWheel'] as const)
  const rate = named(train, 'rate')
  const rule = searchRule(rate, rest, unknown)
  expect(rule).toMatchObject({ above: ['thirdWheel'], below: [] })
  expect(rule.low.valueOf()).toBeCloseTo((75 * 17999.5) / 18000, 9)
  expect(boundBy(rate, unknown)).toEqual(['thirdWheel'])
})
