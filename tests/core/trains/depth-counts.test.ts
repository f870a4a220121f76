import { expect, it } from 'vitest'
import { caliberFields } from '../../../core/fields/caliber-fields.ts'
import { depthParts, toothedFields } from '../../../core/trains/depth-counts.ts'

it.each([
  ['barrel', 'centre pinion', 'barrelTeeth', 'centrePinion'],
  ['Federhaus', 'Minutenradtrieb', 'barrelTeeth', 'centrePinion'],
  ['great wheel', 'centre wheel', 'barrelTeeth', 'centrePinion'],
  ['Centre Wheel', 'third wheel pinion', 'centreWheel', 'thirdPinion'],
  ['petite moyenne', 'pignon de seconde', 'thirdWheel', 'fourthPinion'],
  ['seconderad', 'ankerrad', 'fourthWheel', 'escapePinion'],
  ['cannon pinion', 'minute wheel', 'cannonPinion', 'minuteWheel'],
  ['minute wheel', 'hour wheel', 'minutePinion', 'hourWheel'],
  ['third pinion', 'centre wheel', 'thirdPinion', 'centreWheel'],
  ['third wheel', 'sweep seconds pinion', 'thirdWheel', 'sweepPinion'],
])('%s and %s are %s and %s', (driver, driven, first, second) => {
  expect(depthParts({ driver, driven })).toEqual({ driver: first, driven: second })
})

it('leaves out what it does not know', () => {
  expect(depthParts({ driver: 'crown wheel', driven: 'third pinion' })).toEqual({ driven: 'thirdPinion' })
  expect(depthParts({ driver: 'beat rate', driven: '' })).toEqual({})
})

it('knows every count of a toothed part in the table of fields', () => {
  const counted = Object.entries(caliberFields).filter(([key, { kind }]) => kind === 'count' && key !== 'jewelsStated')
  expect(counted.map(([key]) => key).toSorted()).toEqual([...toothedFields].toSorted())
})
