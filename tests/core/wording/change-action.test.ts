import { expect, it } from 'vitest'
import { blankEntry } from '../../../core/record/entry.ts'
import { withOverrule } from '../../../core/record/with-overrule.ts'
import { changeAction } from '../../../core/wording/change-action.ts'

const entry = { ...blankEntry(), maker: 'Verrin', designation: '17-220' }
const word = { severity: 'accepted', reason: 'Two caps were added.', of: 'disagrees' } as const
const overruled = withOverrule(entry, 'jewels-add-up', word)

it('is an entry where there was none, and a change where there was', () => {
  expect(changeAction(null, entry)).toBe('entry of Verrin 17-220')
  expect(changeAction(entry, { ...entry, parts: [{ part: 'click' }] })).toBe('change of Verrin 17-220')
  expect(changeAction(entry, entry)).toBe('change of Verrin 17-220')
})

it('is the overrule of a proof, or its taking back, where nothing else differs', () => {
  expect(changeAction(entry, overruled)).toBe('overrule of “Jewels add up” at Verrin 17-220')
  expect(changeAction(overruled, withOverrule(overruled, 'jewels-add-up', { ...word, reason: 'Seen.' }))).toBe(
    'overrule of “Jewels add up” at Verrin 17-220',
  )
  expect(changeAction(overruled, entry)).toBe('taking back of the overrule of “Jewels add up” at Verrin 17-220')
})

it('is a change where more was done than that', () => {
  expect(changeAction(entry, withOverrule(overruled, 'sources-agree', word))).toBe('change of Verrin 17-220')
  expect(changeAction(entry, { ...overruled, parts: [{ part: 'click' }] })).toBe('change of Verrin 17-220')
})
