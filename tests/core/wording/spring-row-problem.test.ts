import { expect, it } from 'vitest'
import { springRowProblem } from '../../../core/wording/spring-row-problem.ts'

it('says what is wrong with a row of a list and what to do', () => {
  expect(
    springRowProblem({ key: 'sizes', label: 'Sizes', problem: { code: 'not-so-many', text: '1.5', wanted: 4 } }),
  ).toBe('Sizes: "1.5" does not hold the 4 figures of the order chosen; choose another order or correct the cell.')
  expect(springRowProblem({ key: 'heightMm', label: 'Spring height', problem: { code: 'missing' } })).toBe(
    'Spring height is missing; fill it in.',
  )
})
