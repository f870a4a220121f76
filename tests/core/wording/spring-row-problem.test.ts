import { expect, it } from 'vitest'
import { springRowProblem } from '../../../core/wording/spring-row-problem.ts'

it('says what is wrong with a row of a list and what to do', () => {
  expect(
    springRowProblem({ key: 'sizes', label: 'Sizes', problem: { code: 'not-so-many', text: '1.5', wanted: 4 } }),
  ).toBe('Sizes: "1.5" does not hold the 4 figures of the order chosen; choose another order or correct the cell.')
  expect(springRowProblem({ key: 'heightMm', label: 'Spring height', problem: { code: 'missing' } })).toBe(
    'Spring height is missing; fill it in.',
  )
  expect(
    springRowProblem({
      key: 'end',
      label: 'Spring end',
      problem: { code: 'not-a-choice', text: 'X7', choices: ['hole'] },
    }),
  ).toBe(
    'Spring end: "X7" is not a word that Lignebook knows; say above what it means in this list, or correct the cell.',
  )
  expect(
    springRowProblem({ key: 'heightMm', label: 'Spring height', problem: { code: 'unreadable', text: 'deux' } }),
  ).toBe('Spring height: "deux" cannot be read as a size; correct the cell, or say above what its column holds.')
})
