import { expect, test } from 'vitest'
import { searchReasonSchema } from '../../../core/api/contract.ts'
import { wordSearchReason } from '../../../core/wording/search-reason.ts'

test('every reason is a sentence that names what matched', () => {
  for (const code of searchReasonSchema.shape.code.options) {
    expect(wordSearchReason({ code, matched: '17-220' })).toMatch(/^[A-Z].*17-220\.$/)
  }
})
