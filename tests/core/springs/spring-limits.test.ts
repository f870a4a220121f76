import { expect, it } from 'vitest'
import { fillVerdict } from '../../../core/springs/fill-verdict.ts'
import { springLimits } from '../../../core/springs/spring-limits.ts'

it('holds a substitute to the fill that the proofs allow', () => {
  const { usual, borne } = springLimits.fill
  expect(usual.map(fillVerdict)).toEqual(['agrees', 'agrees'])
  expect(borne.map(fillVerdict)).toEqual(['doubtful', 'doubtful'])
  expect([borne[0] - 1e-9, borne[1] + 1e-9].map(fillVerdict)).toEqual(['disagrees', 'disagrees'])
})
