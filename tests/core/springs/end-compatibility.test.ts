import { expect, it } from 'vitest'
import { endMatch } from '../../../core/springs/end-compatibility.ts'

it('tells the same end from one that hooks alike and one that does not hold', () => {
  expect(endMatch('tongue', 'tongue')).toBe('same')
  expect(endMatch('hole-with-brace', 'hole')).toBe('alike')
  expect(endMatch('swivel', 'hole-with-brace')).toBe('alike')
  expect(endMatch('t-end', 'double-brace')).toBe('no-hold')
  expect(endMatch('slipping-bridle', 'tongue')).toBe('no-hold')
})

it('says nothing where an end is not stated or is of another kind', () => {
  expect(endMatch(undefined, 'hole')).toBe('not-known')
  expect(endMatch('hole', undefined)).toBe('not-known')
  expect(endMatch('other', 'hole')).toBe('not-known')
})
