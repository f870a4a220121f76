import { expect, it } from 'vitest'
import { blankEntry } from '../../../core/record/entry.ts'
import { withOverrule } from '../../../core/record/with-overrule.ts'

const entry = { ...blankEntry(), maker: 'Verrin', designation: '17-220', later: { kept: 1 } }
const word = { severity: 'accepted', reason: 'Two caps were added.', of: 'disagrees' } as const

it('overrules a proof, once', () => {
  const once = withOverrule(entry, 'jewels-add-up', word)
  expect(once).toEqual({ ...entry, overrules: [{ proof: 'jewels-add-up', ...word }] })
  const again = withOverrule(once, 'jewels-add-up', { ...word, severity: 'doubtful' })
  expect(again.overrules).toEqual([{ proof: 'jewels-add-up', ...word, severity: 'doubtful' }])
})

it('leaves the overrules of other proofs, those of a newer version among them', () => {
  const later = { proof: 'some-later-proof', severity: 'wrong' as const, reason: 'Seen.', of: 'agrees' as const }
  const both = withOverrule({ ...entry, overrules: [later] }, 'jewels-add-up', word)
  expect(both.overrules).toEqual([later, { proof: 'jewels-add-up', ...word }])
  expect(withOverrule(both, 'jewels-add-up', null).overrules).toEqual([later])
})

it('is gone without a trace when the last one is taken back', () => {
  expect(withOverrule(withOverrule(entry, 'jewels-add-up', word), 'jewels-add-up', null)).toEqual(entry)
  expect('overrules' in withOverrule(entry, 'jewels-add-up', null)).toBe(false)
})
