import { expect, test } from 'vitest'
import { decidingMeasurements } from '../../../core/trains/deciding-measurement.ts'

const pairs = [['thirdWheel', 'fourthPinion']] as const

test('the count that parts the answers best is named, leaves before teeth, and the distance with it', () => {
  const answers = [
    { thirdWheel: 75, fourthPinion: 10 },
    { thirdWheel: 60, fourthPinion: 8 },
  ]
  expect(decidingMeasurements(answers, ['thirdWheel', 'fourthPinion'], {}, pairs)).toEqual([
    { kind: 'count', key: 'fourthPinion', counts: [8, 10], left: 1 },
    {
      kind: 'distance',
      driver: 'thirdWheel',
      driven: 'fourthPinion',
      pairs: [
        { driver: 75, driven: 10, modules: 42.5 },
        { driver: 60, driven: 8, modules: 34 },
      ],
      left: 1,
    },
  ])
})

test('a measurement that leaves several says how many', () => {
  const answers = [{ thirdWheel: 75 }, { thirdWheel: 75, escapeTeeth: 16 }, { thirdWheel: 60, escapeTeeth: 15 }]
  const [count] = decidingMeasurements(answers, ['thirdWheel'], {}, [])
  expect(count).toMatchObject({ kind: 'count', key: 'thirdWheel', left: 2 })
})

test('a count stated beside the one looked for is part of the pair', () => {
  const [, distance] = decidingMeasurements(
    [{ thirdWheel: 75 }, { thirdWheel: 76 }],
    ['thirdWheel'],
    { fourthPinion: 10 },
    pairs,
  )
  expect(distance).toMatchObject({ kind: 'distance', pairs: [{ modules: 42.5 }, { modules: 43 }] })
})

test('one answer needs no measurement, and a count that is the same in all decides nothing', () => {
  expect(decidingMeasurements([{ thirdWheel: 75 }], ['thirdWheel'], {}, pairs)).toEqual([])
  expect(decidingMeasurements([{ thirdWheel: 75 }, { thirdWheel: 75 }], ['thirdWheel'], {}, pairs)).toEqual([])
})
