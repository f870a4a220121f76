import { expect, it } from 'vitest'
import { fillVerdict } from '../../../core/springs/fill-verdict.ts'

it.each([
  [0.32999, 'disagrees'],
  [0.33001, 'doubtful'],
  [0.39999, 'doubtful'],
  [0.40001, 'agrees'],
  [0.5, 'agrees'],
  [0.59999, 'agrees'],
  [0.60001, 'doubtful'],
  [0.66999, 'doubtful'],
  [0.67001, 'disagrees'],
  [1.5, 'disagrees'],
])('a fill of %d %s', (fill, verdict) => {
  expect(fillVerdict(fill)).toBe(verdict)
})
