import { expect, test } from 'vitest'
import { shownAs, shownWord } from '../../../renderer/components/shown-as.ts'

const finding = (severity: 'accepted' | 'doubtful' | 'wrong', applies = true) =>
  ({ outcome: 'doubtful', overruled: { severity, reason: 'Seen.', applies } }) as const

test('a finding stands where its outcome puts it, until its owner says otherwise', () => {
  expect(shownAs({ outcome: 'outside-range', overruled: null })).toBe('outside-range')
  expect((['accepted', 'doubtful', 'wrong'] as const).map((severity) => shownAs(finding(severity)))).toEqual([
    'accepted',
    'doubtful',
    'disagrees',
  ])
  expect(shownAs(finding('accepted', false))).toBe('doubtful')
})

test('it is called by its outcome, or by what its owner makes of it', () => {
  expect(shownWord({ outcome: 'cannot-check', overruled: null })).toBe('cannot check')
  expect(shownWord(finding('wrong'))).toBe('counts as wrong')
  expect(shownWord(finding('wrong', false))).toBe('doubtful')
})
