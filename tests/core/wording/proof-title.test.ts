import { expect, it } from 'vitest'
import { proofs } from '../../../core/proofs/index.ts'
import { proofTitle } from '../../../core/wording/proof-title.ts'

it('is the statement as a heading, and the id of a proof that only a newer version knows', () => {
  for (const { id, title } of proofs) expect(proofTitle(id)).toBe(title)
  expect(proofTitle('some-later-proof')).toBe('some-later-proof')
})
