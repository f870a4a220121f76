import { expect, it } from 'vitest'
import { outcomeWords } from '../../../core/wording/outcome.ts'
import { overruleMark, overruleSentence, overruleWords } from '../../../core/wording/severity.ts'

const overruled = { severity: 'accepted', reason: 'Two caps were added when it was overhauled', applies: true } as const

it('says what was made of a finding and why, as one sentence', () => {
  expect(overruleSentence(overruled)).toBe('Accepted: Two caps were added when it was overhauled.')
  expect(overruleSentence({ ...overruled, severity: 'wrong', reason: ' Counted twice! ' })).toBe(
    'Counts as wrong: Counted twice!',
  )
})

it('says where the finding has changed since', () => {
  expect(overruleSentence({ ...overruled, applies: false })).toBe(
    'Accepted: Two caps were added when it was overhauled. The finding has changed since; look again.',
  )
})

it('has a word for each, and a mark that no outcome has', () => {
  expect(Object.keys(overruleWords).sort()).toEqual(['accepted', 'doubtful', 'wrong'])
  expect(Object.values(outcomeWords).map(({ mark }) => mark)).not.toContain(overruleMark)
})
