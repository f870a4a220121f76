import Fraction from 'fraction.js'
import { expect, it } from 'vitest'
import { goingTrain } from '../../../core/formulas/going-train.ts'
import type { CaliberValues } from '../../../core/record/caliber.ts'

const watch: CaliberValues = {
  barrelTeeth: 80,
  centrePinion: 10,
  centreWheel: 80,
  thirdPinion: 10,
  thirdWheel: 75,
  fourthPinion: 10,
  fourthWheel: 80,
  escapePinion: 8,
  escapeTeeth: 15,
}
const speeds = (values: CaliberValues, hours?: Fraction) =>
  goingTrain(values, hours).arbors.map(({ arbor, turnsPerHour }) => `${arbor} ${turnsPerHour?.toFraction() ?? '?'}`)

it('gives each arbor from barrel to escape its turns in an hour', () => {
  expect(speeds(watch)).toEqual(['barrel 1/8', 'centre 1', 'third 8', 'fourth 60', 'escape 600'])
})

it('puts intermediate, fifth and sweep arbors where they are stated', () => {
  const long = { ...watch, intermediatePinion: 10, intermediateWheel: 40, fifthPinion: 10, fifthWheel: 60 }
  expect(speeds({ ...long, sweepDriver: 75, sweepPinion: 10 })).toEqual([
    'barrel 1/32',
    'intermediate 1/4',
    'centre 1',
    'third 8',
    'fourth 60',
    'fifth 480',
    'escape 3600',
    'sweep 60',
  ])
})

it('leaves out a fourth arbor that the stated rate does without', () => {
  const clock = { centreWheel: 64, thirdPinion: 8, thirdWheel: 60, escapePinion: 8, escapeTeeth: 30 }
  expect(speeds({ ...clock, beatRateVph: 3600 })).toEqual(['barrel ?', 'centre 1', 'third 8', 'escape 60'])
  expect(speeds(clock)).toEqual(['barrel ?', 'centre 1', 'third 8', 'fourth ?', 'escape ?'])
})

it('knows no speed beyond a count that is missing, and keeps the counts that are there', () => {
  const { thirdWheel: _, ...gap } = watch
  const train = goingTrain(gap)
  expect(train.arbors.map(({ turnsPerHour }) => turnsPerHour?.toFraction() ?? null)).toEqual([
    '1/8',
    '1',
    '8',
    null,
    null,
  ])
  expect(train.arbors.at(-1)).toMatchObject({ pinion: 8, wheel: 15 })
  expect(train.meshes[2]).toEqual({ driver: 'third', driven: 'fourth', pinion: 10, ratio: null })
})

it('takes the exact hours of a centre turn where they are given', () => {
  expect(speeds({ ...watch, hoursPerCentreTurn: 1.333 }, new Fraction(4, 3))[1]).toBe('centre 3/4')
  expect(speeds({ ...watch, hoursPerCentreTurn: 4 / 3 })[1]).toBe('centre 3/4')
})

it('gives each arbor the wheel that it carries and the pinion by which it is driven', () => {
  expect(goingTrain(watch).arbors.map(({ arbor, pinion, wheel }) => ({ arbor, pinion, wheel }))).toEqual([
    { arbor: 'barrel', pinion: undefined, wheel: 80 },
    { arbor: 'centre', pinion: 10, wheel: 80 },
    { arbor: 'third', pinion: 10, wheel: 75 },
    { arbor: 'fourth', pinion: 10, wheel: 80 },
    { arbor: 'escape', pinion: 8, wheel: 15 },
  ])
})

it('shows a sweep arbor as soon as either of its counts is stated', () => {
  for (const half of [{ sweepDriver: 75 }, { sweepPinion: 10 }])
    expect(speeds({ ...watch, ...half }).at(-1)).toBe('sweep ?')
})

it('holds no place for a count that is not stated', () => {
  const { arbors, meshes } = goingTrain({ centreWheel: 80 })
  expect(Object.keys(arbors[0] ?? {})).toEqual(['arbor', 'turnsPerHour'])
  expect(meshes[1]).toStrictEqual({ driver: 'centre', driven: 'third', wheel: 80, ratio: null })
  expect(meshes[2]).toStrictEqual({ driver: 'third', driven: 'fourth', ratio: null })
})
