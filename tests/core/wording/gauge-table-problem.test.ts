import { expect, test } from 'vitest'
import { gaugeProblem, gaugeRowProblem } from '../../../core/wording/gauge-table-problem.ts'

test.each([
  [{ code: 'not-in-form' }, /cannot be read/],
  [{ code: 'number-missing' }, /number is missing/],
  [{ code: 'no-single-size' }, /without limits/],
  [{ code: 'no-gauge-number', text: 'fine' }, /"fine"/],
  [{ code: 'impossible-size', mm: 12, possible: [0.01, 3] }, /^12 mm is outside what is possible \(0\.01 to 3 mm\)/],
  [{ code: 'print-differs', text: '12/100', mm: 0.13 }, /"12\/100" does not come to 0\.13 mm/],
  [{ code: 'unreadable', text: 'thin' }, /^size: "thin" cannot be read/],
] as const)('%o is said with what to do', (problem, sentence) => {
  expect(gaugeProblem(problem)).toMatch(sentence)
  expect(gaugeProblem(problem)).toMatch(/[;.].*\.$/)
})

test('a row is named as one counts', () => {
  expect(gaugeRowProblem({ row: 4, cell: 'number', problem: { code: 'number-twice', text: '14', row: 1 } })).toBe(
    'Row 5: number "14" stands in row 2 already; correct one of the two.',
  )
})
