import { expect, it } from 'vitest'
import { inherit } from '../../../core/record/inherit.ts'
import { baseSentence, missingBaseSentence } from '../../../core/wording/base-sentence.ts'
import { proofReports } from '../../../core/wording/proof-report.ts'
import { caliberPrinted, soundWatch } from '../../support/caliber-printed.ts'

const variant = caliberPrinted(
  { basedOn: '1', fourthWheel: '66', escapePinion: '7' },
  { maker: 'Verrin', designation: '2' },
)
const messageOf = (caliber: typeof variant) =>
  proofReports(caliber).find(({ proof }) => proof === 'variant-keeps-its-base')?.message

it('names each count in which a variant departs from its base', () => {
  expect(messageOf(inherit(variant, caliberPrinted(soundWatch)))).toBe(
    'A variant usually keeps train and barrel; this one differs from 1 in fourth wheel 66 against 80 and escape pinion 7 ' +
      'against 8. Look these up again in both, or note that the variant was changed.',
  )
})

it('says that the base is not at hand', () => {
  expect(messageOf(variant)).toBe(missingBaseSentence('1'))
  expect(missingBaseSentence('1')).toContain('Its base, 1, is not at hand')
})

it('is a whole sentence without figures', () => {
  const judgement = { stated: null, found: null, unit: '', difference: null, allowed: null, working: [] }
  expect(baseSentence({ ...judgement, outcome: 'doubtful', reason: 'base-differs' })).toMatch(/^A variant.*\.$/)
})
