import fc from 'fast-check'
import { expect, test } from 'vitest'
import { workingTerms } from '../../../core/wording/working-terms.ts'

test('fractions stand apart from the signs between them', () => {
  expect(workingTerms('80/10 × 75/10 × 2 × 15 = 18 000')).toEqual([
    { above: '80', below: '10' },
    { text: ' × ' },
    { above: '75', below: '10' },
    { text: ' × 2 × 15 = 18 000' },
  ])
  expect(workingTerms('143616 ÷ 14 2/5')).toEqual([{ text: '143616 ÷ 14 ' }, { above: '2', below: '5' }])
})

test('what is no fraction of whole numbers stays as it is', () => {
  for (const text of ['4 × 480 × 0.18 ÷ (π × (16² − 6²))', '7.5/0.18', '1/2/26', ''])
    expect(workingTerms(text)).toEqual(text === '' ? [] : [{ text }])
})

test('the pieces put together are the line', () => {
  const piece = fc.constantFrom('80/10', ' × ', ' ÷ ', '2', '1 1/3', '0.5', ' = ', '/')
  fc.assert(
    fc.property(fc.array(piece), (pieces) => {
      const line = pieces.join('')
      const terms = workingTerms(line)
      expect(terms.map((term) => (term.above === undefined ? term.text : `${term.above}/${term.below}`)).join('')).toBe(
        line,
      )
    }),
  )
})
