import { expect, test } from 'vitest'
import { judgeFreedom, leverFreedomKeys, lockLeft } from '../../../core/bench/lever-freedoms.ts'
import {
  freedomLine,
  freedomSentence,
  freedomStandardLine,
  lockLeftSentence,
} from '../../../core/wording/freedom-sentence.ts'

const exact = (value: number) => ({ value, low: value, high: value })

test('every freedom has its words for too little, too much and as allowed', () => {
  for (const freedom of leverFreedomKeys) {
    expect(freedomSentence(judgeFreedom(freedom, 'club', exact(0.1)))).toMatch(/^Less than is allowed/)
    expect(freedomSentence(judgeFreedom(freedom, 'club', exact(4)))).toMatch(/^More than is allowed/)
    expect(freedomSentence(judgeFreedom(freedom, 'club', { value: 1, low: 0.1, high: 4 }))).toMatch(/measure it finer/)
  }
  expect(freedomSentence(judgeFreedom('lock', 'club', exact(1.5)))).toBe('As the book allows.')
})

test('a figure printed alone is shown as printed, a range as a range', () => {
  expect(freedomStandardLine('drop', judgeFreedom('drop', 'ratchet', exact(2)).limits)).toBe('2°: Playtner 1910, p. 12')
  expect(freedomStandardLine('edge', judgeFreedom('edge', 'club', exact(1)).limits)).toBe(
    '1 to 1.25°: Playtner 1910, p. 30',
  )
  expect(freedomLine(judgeFreedom('lock', 'club', exact(1.5)))).toBe('Lock: 1.5°, within (1.5°: Playtner 1910, p. 15)')
})

test('what a jar leaves of the lock is said in each case', () => {
  const left = (edge: number, off = 0) =>
    lockLeftSentence(
      lockLeft({ lock: exact(1), run: exact(0.25), edge: { value: edge, low: edge - off, high: edge + off } }),
    )
  expect(left(1)).toMatch(/0\.25° of lock is left/)
  expect(left(1.5)).toMatch(/no lock is left/)
  expect(left(1.25, 0.1)).toMatch(/between −0\.1° and 0\.1° of lock/)
})
