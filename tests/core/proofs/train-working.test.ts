import { expect, it } from 'vitest'
import { stagesToCentre } from '../../../core/formulas/train-stages.ts'
import { countsWhere, fractionsOf } from '../../../core/proofs/train-working.ts'

it('writes a chain of pairs as on paper', () => {
  expect(fractionsOf([80, 75], [10, 10])).toBe('80/10 × 75/10')
})

it('names the counts that are stated by their field', () => {
  expect(countsWhere({ barrelTeeth: 80, thirdWheel: 75 }, stagesToCentre({}))).toStrictEqual({ barrelTeeth: 80 })
})
