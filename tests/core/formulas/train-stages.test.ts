import { expect, it } from 'vitest'
import { missingCounts, stageCounts, stagesFromCentre, stagesToCentre } from '../../../core/formulas/train-stages.ts'

const pairs = (stages: ReturnType<typeof stagesFromCentre>) => stages.map(({ wheel, pinion }) => `${wheel}/${pinion}`)

it('pairs each wheel with the pinion of the next arbor that is there', () => {
  expect(pairs(stagesFromCentre({}, true))).toEqual([
    'centreWheel/thirdPinion',
    'thirdWheel/fourthPinion',
    'fourthWheel/escapePinion',
  ])
  expect(pairs(stagesFromCentre({ fifthWheel: 60 }, true)).slice(2)).toEqual([
    'fourthWheel/fifthPinion',
    'fifthWheel/escapePinion',
  ])
  expect(pairs(stagesFromCentre({}, false))).toEqual(['centreWheel/thirdPinion', 'thirdWheel/escapePinion'])
  expect(pairs(stagesFromCentre({ fifthPinion: 8 }, false))[1]).toBe('thirdWheel/fifthPinion')
})

it('has the intermediate arbor where either of its counts is stated', () => {
  expect(pairs(stagesToCentre({}))).toEqual(['barrelTeeth/centrePinion'])
  expect(pairs(stagesToCentre({ intermediatePinion: 10 }))).toHaveLength(2)
})

it('names the counts that are missing and then gives no lists', () => {
  const stages = stagesToCentre({})
  expect(stageCounts({ barrelTeeth: 80 }, stages)).toBeNull()
  expect(missingCounts({ barrelTeeth: 80 }, stages)).toEqual(['centrePinion'])
  expect(stageCounts({ barrelTeeth: 80, centrePinion: 10 }, stages)).toEqual({ wheels: [80], pinions: [10] })
})
