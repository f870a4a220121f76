import { expect, it } from 'vitest'
import { onPaper } from '../../../core/quantities/on-paper.ts'

it('writes a size to a tenth of a micrometre, and leaves a shorter one as it is', () => {
  expect(onPaper(38.349093684)).toBe(38.3491)
  expect(onPaper(0.18)).toBe(0.18)
  expect(onPaper(1.6 - 1.5)).toBe(0.1)
})

it('writes fewer decimals where fewer are asked for', () => {
  expect(onPaper(7.50557, 3)).toBe(7.506)
})
