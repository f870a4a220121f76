import { expect, test } from 'vitest'
import { leverWhereThereIsOne, playMovementOf, playPlacesOf } from '../../../core/bench/play-places-of.ts'

const usual = ['balance', 'lever', 'escape', 'fourth', 'third', 'centre', 'barrel', 'barrelArbor']

test('a caliber of which nothing is known has the usual train and a lever, balance first', () => {
  expect(playPlacesOf({}, 'watch')).toEqual(usual)
})

test('intermediate, fifth and sweep arbors are there where the caliber has them', () => {
  expect(playPlacesOf({ intermediatePinion: 10, fifthWheel: 70, secondsDisplay: 'centre-indirect' }, 'watch')).toEqual([
    'balance',
    'lever',
    'escape',
    'sweep',
    'fifth',
    'fourth',
    'third',
    'centre',
    'intermediate',
    'barrel',
    'barrelArbor',
  ])
  expect(playPlacesOf({ intermediateWheel: 60 }, 'watch')).toContain('intermediate')
  expect(playPlacesOf({ fifthPinion: 8 }, 'watch')).toContain('fifth')
  expect(playPlacesOf({ secondsDisplay: 'small' }, 'watch')).not.toContain('sweep')
})

test('a train of two pairs has no fourth arbor', () => {
  const clock = {
    beatRateVph: 3600,
    centreWheel: 64,
    thirdPinion: 8,
    thirdWheel: 60,
    escapePinion: 8,
    escapeTeeth: 30,
  }
  expect(playPlacesOf(clock, 'watch')).not.toContain('fourth')
  expect(playPlacesOf({ ...clock, fourthWheel: 60 }, 'watch')).toContain('fourth')
})

test.each([
  ['watch', true],
  ['clock', true],
  ['cylinder', false],
  ['other-watch', false],
] as const)('%s has a lever: %s', (movement, has) => {
  expect(playPlacesOf({}, movement).includes('lever')).toBe(has)
  expect(leverWhereThereIsOne(['lever', 'escape'], movement)).toEqual(has ? ['lever', 'escape'] : ['escape'])
})

test.each([
  ['cylinder', 'cylinder'],
  ['duplex', 'other-watch'],
  ['detent', 'other-watch'],
  ['verge', 'other-watch'],
  ['lever', 'watch'],
  ['pin-lever', 'watch'],
  ['other', 'watch'],
  [undefined, 'watch'],
] as const)('a caliber with escapement %s is a %s', (escapement, movement) => {
  expect(playMovementOf(escapement === undefined ? {} : { escapement })).toBe(movement)
})
