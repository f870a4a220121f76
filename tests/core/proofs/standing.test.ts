import { expect, test } from 'vitest'
import { severityOf } from '../../../core/proofs/severity.ts'
import { caliberStanding, type Standing, standingOf, standings } from '../../../core/proofs/standing.ts'

test('a finding stands as it weighs, and where it weighs nothing, as it was found', () => {
  const outcomes = ['disagrees', 'doubtful', 'outside-range', 'cannot-check', 'agrees'] as const
  expect(outcomes.map((outcome) => standingOf({ outcome, severity: severityOf(outcome) }))).toEqual([
    'wrong',
    'doubtful',
    'doubtful',
    'cannot-check',
    'agrees',
  ])
  expect(standingOf({ outcome: 'disagrees', severity: 'accepted' })).toBe('accepted')
  expect(standingOf({ outcome: 'cannot-check', severity: 'wrong' })).toBe('wrong')
})

test('a caliber stands as its gravest finding', () => {
  const standing = (...of: Standing[]) => caliberStanding(new Set(of))
  expect(standing(...standings)).toBe('wrong')
  expect(standing('agrees', 'accepted', 'doubtful')).toBe('doubtful')
  expect(standing('cannot-check', 'agrees')).toBe('sound')
  expect(standing('cannot-check', 'accepted')).toBe('sound')
  expect(standing('cannot-check')).toBe('unproved')
  expect(standing()).toBe('unproved')
})
