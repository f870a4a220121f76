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

it('says what is against the seats of jewels, and that the unusual may be so', () => {
  const working = [
    {
      formula: 'third, hole: 1 − 2',
      where: { objection: 'odd-pivot', place: 'third', kind: 'hole', count: 1, expected: 2 },
      gives: -1,
    },
  ]
  const judged = { ...judgement, reason: 'jewels-unusual', stated: 8, found: 8, working }
  expect(jewelFindings['jewels-unusual']?.(judged)).toBe(
    '1 hole jewel is listed for the third, which has 2 pivots. It may be so: look at the movement, and overrule this with a remark where it is.',
  )
})
