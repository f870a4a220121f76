import { expect, test } from 'vitest'
import { oneSentence } from '../../../core/wording/one-sentence.ts'

test('sentences become one, and figures and abbreviations stay', () => {
  expect(oneSentence('A bridle of 2 mm leaves no room. Measure both again.')).toBe(
    'A bridle of 2 mm leaves no room; measure both again.',
  )
  expect(oneSentence('One. Two. Éclat.')).toBe('One; two; éclat.')
  expect(oneSentence('It is 0.5 mm. off, or 1. 5.')).toBe('It is 0.5 mm. off, or 1. 5.')
})
