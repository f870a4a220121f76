import { expect, test } from 'vitest'
import { proofs } from '../../../core/proofs/index.ts'
import { proofTerms } from '../../../core/proofs/proof-terms.ts'
import { findTerms } from '../../../core/record/find-terms.ts'

const found = (typed: string) => findTerms(proofTerms(), typed).map(({ key }) => key)

test('the glossary explains every proof once, in alphabetical order', () => {
  expect(
    proofTerms()
      .map(({ key }) => key)
      .toSorted(),
  ).toEqual(proofs.map(({ id }) => id).toSorted())
  const labels = proofTerms().map(({ label }) => label)
  expect(labels).toEqual(labels.toSorted())
})

test('a proof is found by its title, and by its source, tolerance and validity', () => {
  expect(found('Jewels add up')[0]).toBe('jewels-add-up')
  expect(found('derham')).toContain('beat-rate-follows-train')
  expect(found('half a vibration')).toContain('beat-rate-follows-train')
  expect(found('motion work of two pairs')).toEqual(['hour-hand-follows-minute-hand'])
})
