import { expect, test } from 'vitest'
import { wordCellFault, wordRowFault } from '../../../core/wording/table-problem.ts'

test('a cell says its field, what stands there and what to do', () => {
  expect(wordCellFault('Third wheel', { code: 'not-whole', text: '80.5' })).toBe(
    'Third wheel: "80.5" is not a whole number; count again and write a whole number.',
  )
  expect(wordCellFault('Diameter', { code: 'said-twice', text: '38' })).toMatch(/second column/)
})

test('a row says what it lacks', () => {
  expect(wordRowFault('no-designation')).toMatch(/designation/)
  expect(wordRowFault('no-maker')).toMatch(/maker/i)
})
