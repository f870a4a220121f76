import { expect, test } from 'vitest'
import { standings } from '../../../core/proofs/standing.ts'
import { countStanding, standingWord } from '../../../core/wording/standing.ts'

test('each standing has its own word', () => {
  expect(new Set(standings.map(standingWord)).size).toBe(standings.length)
})

test('a count agrees with its verb', () => {
  expect(countStanding('agrees', 1)).toBe('1 agrees')
  expect(countStanding('agrees', 12_000)).toBe('12\u202f000 agree')
  expect(countStanding('wrong', 2)).toBe('2 wrong')
})
