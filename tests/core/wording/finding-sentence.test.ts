import { expect, it } from 'vitest'
import { proofs } from '../../../core/proofs/index.ts'
import { findingSentence, findingSentences } from '../../../core/wording/finding-sentence.ts'

const reasons = proofs.flatMap((proof) => proof.reasons)

it.each(reasons)('has a whole sentence for %s', (reason) => {
  const judgement = { stated: 1, found: 2, unit: '', difference: 1, allowed: 0, working: [] }
  const sentence = findingSentence({ ...judgement, outcome: 'disagrees', reason, details: {} })
  expect(sentence).toMatch(/^[A-Z0-9].*\.$/s)
  expect(sentence).not.toContain('undefined')
})

it('has no sentence that no proof gives as its reason', () => {
  expect(Object.keys(findingSentences).toSorted()).toEqual(reasons.toSorted())
})
