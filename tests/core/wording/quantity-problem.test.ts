import { expect, test } from 'vitest'
import { readField } from '../../../core/record/read-field.ts'
import { wordProblem } from '../../../core/wording/quantity-problem.ts'
import { wordRemark } from '../../../core/wording/unusual-remark.ts'

const say = (printed: string): string => {
  const read = readField('springThicknessMm', printed)
  return read.ok ? '' : wordProblem('Spring thickness', read.problem)
}

test('an ambiguous comma is explained with both readings', () => {
  expect(say('1,234')).toBe('Spring thickness: "1,234" can be read as 1.234 mm or 1234 mm; write 1.234 or 1234.')
})

test.each(['', 'thin', '8 3/4', '6/0', '18 lines', '1 1/0 mm', '0.2…0.1', '2 g6', '40'])(
  'one sentence says what to do about %s',
  (printed) => {
    expect(say(printed)).toMatch(/^Spring thickness: [^.]*(?:\d\.\d[^.]*)*; [^;]*\.$/)
  },
)

test('an unusual value is named with what is usual', () => {
  expect(wordRemark('escapeTeeth', { code: 'unusual', value: 12, usual: [13, 30] })).toBe(
    'Escape teeth: 12 is unusual; most lie between 13 and 30. Kept as written.',
  )
})

test('a value that is long or breaks the line is quoted so that the sentence can be read', () => {
  expect(say('7'.repeat(100_000))).toBe(
    `Spring thickness: "${'7'.repeat(60)}…" cannot be read; write it as in the help beside the field.`,
  )
  expect(say('thin\n\u001b[31m')).toMatch(/^Spring thickness: "thin \[31m" cannot be read; /)
  expect(say(`18 ${'l'.repeat(70)}`)).toMatch(/carries the unit "l{60}…", /)
})
