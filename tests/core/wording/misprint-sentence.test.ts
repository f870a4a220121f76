import { expect, it } from 'vitest'
import { misprintSentence } from '../../../core/wording/misprint-sentence.ts'
import { proofReports } from '../../../core/wording/proof-report.ts'
import { caliberPrinted, soundWatch } from '../../support/caliber-printed.ts'

const change = {
  field: 'thirdWheel',
  printed: '57',
  meant: '75',
  slip: 'digits-exchanged',
  changesFound: true,
} as const

it('says which value, what it may have been, and what it then gives', () => {
  expect(misprintSentence({ ...change, found: 18000, unit: 'vph' })).toBe(
    'Third wheel 75 instead of 57 gives 18\u202f000 (two digits exchanged).',
  )
  expect(misprintSentence({ ...change, slip: 'neighbour', found: 60, unit: 'turns an hour' })).toBe(
    'Third wheel 75 instead of 57 gives 60 turns an hour (a neighbouring count).',
  )
})

it('says that the stated value would agree where it is the one to change', () => {
  const rate = { field: 'beatRateVph', printed: '18 600', meant: '18 000', slip: 'digit-misread' } as const
  expect(misprintSentence({ ...rate, found: 18000, unit: 'vph', changesFound: false })).toBe(
    'Beat rate 18 000 instead of 18 600 would agree (one digit misread).',
  )
})

it('stands in the report of a proof that disagrees, and in no other', () => {
  const reports = proofReports(caliberPrinted({ ...soundWatch, thirdWheel: '57' }))
  for (const { outcome, hints } of reports) expect(hints.length > 0).toBe(outcome === 'disagrees')
})
