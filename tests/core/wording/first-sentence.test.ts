import { expect, test } from 'vitest'
import { firstSentence } from '../../../core/wording/first-sentence.ts'

test.each([
  ['It is 0.5 mm off. Measure again.', 'It is 0.5 mm off.'],
  [
    '18 000 is stated; the train gives 13 680 (27 648 s a day). Count again.',
    '18 000 is stated; the train gives 13 680 (27 648 s a day).',
  ],
  ['Third wheel: 57 (hb, p. 9) against 75. Look both up.', 'Third wheel: 57 (hb, p. 9) against 75.'],
  ['Only one.', 'Only one.'],
  ['no end', 'no end'],
  ['', ''],
])('of %s', (text, first) => {
  expect(firstSentence(text)).toBe(first)
})
