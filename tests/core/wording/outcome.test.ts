import { expect, it } from 'vitest'
import { outcomeWords } from '../../../core/wording/outcome.ts'

it('has a word and a mark of its own for each outcome', () => {
  const rows = Object.values(outcomeWords)
  expect(new Set(rows.map(({ word }) => word)).size).toBe(5)
  expect(new Set(rows.map(({ mark }) => mark)).size).toBe(5)
})
