import { expect, it } from 'vitest'
import { jewelFindings } from '../../../../core/wording/findings/jewel-findings.ts'

const judgement = { unit: '', difference: 0, allowed: 0, working: [], outcome: 'disagrees' } as const

it('says how many jewels are left out', () => {
  expect(
    jewelFindings['jewels-short']?.({ ...judgement, reason: 'jewels-short', stated: 17, found: 15, difference: -2 }),
  ).toBe(
    '17 jewels are stated and 15 are listed: 2 too few. Look for a place that is not listed, or correct the total.',
  )
})
