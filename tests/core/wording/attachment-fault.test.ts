import { expect, test } from 'vitest'
import { attachmentFaults } from '../../../core/record/attachment-kind.ts'
import { wordAttachmentFault } from '../../../core/wording/attachment-fault.ts'
import { wordFailure } from '../../../core/wording/failure.ts'

test('every reason names the file and says what to do', () => {
  for (const fault of attachmentFaults) {
    const said = wordAttachmentFault('plate.png', fault)
    expect(said).toMatch(/^plate\.png [a-z].*\. [A-Z].*\.$|^plate\.png [a-z].*\. (?:Take|Save|Choose|Try)/)
    expect(wordFailure({ code: 'attachment-refused', details: { name: 'plate.png', fault } })).toBe(said)
  }
})

test('limits are said in figures', () => {
  expect(wordAttachmentFault('a.pdf', 'too-large')).toContain('25 MB')
  expect(wordAttachmentFault('a.pdf', 'too-many-on-caliber')).toContain('100 files')
})
