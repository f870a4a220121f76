import { expect, test } from 'vitest'
import { playMovementOf, playPlacesOf } from '../../../core/bench/play-places-of.ts'

const usual = ['balance', 'lever', 'escape', 'fourth', 'third', 'centre', 'barrel', 'barrelArbor']

test('a caliber of which nothing is known has the usual train and a lever, balance first', () => {
  expect(playPlacesOf({})).toEqual(usual)
})

test('intermediate, fifth and sweep arbors are there where the caliber has them', () => {
  expect(playPlacesOf({ intermediatePinion: 10, fifthWheel: 70, secondsDisplay: 'centre-indirect' })).toEqual([
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
  expect(playPlacesOf({ intermediateWheel: 60 })).toContain('intermediate')
  expect(playPlacesOf({ fifthPinion: 8 })).toContain('fifth')
  expect(playPlacesOf({ secondsDisplay: 'small' })).not.toContain('sweep')
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
  expect(playPlacesOf(clock)).not.toContain('fourth')
  expect(playPlacesOf({ ...clock, fourthWheel: 60 })).toContain('fourth')
})

test.each([
  ['cylinder', false],
  ['duplex', false],
  ['detent', false],
  ['verge', false],
  ['lever', true],
  ['pin-lever', true],
  ['other', true],
] as const)('escapement %s has a lever: %s', (escapement, has) => {
  expect(playPlacesOf({ escapement }).includes('lever')).toBe(has)
})

test('only a cylinder is another kind of movement', () => {
  expect(playMovementOf({ escapement: 'cylinder' })).toBe('cylinder')
  expect(playMovementOf({ escapement: 'lever' })).toBe('watch')
  expect(playMovementOf({})).toBe('watch')
})
