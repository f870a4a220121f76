import { expect, it } from 'vitest'
import { recordFindings } from '../../../../core/wording/findings/record-findings.ts'

const judgement = { unit: '', difference: 0, allowed: 0, working: [], outcome: 'disagrees' } as const

it('says from which base train and barrel come', () => {
  expect(
    recordFindings['base-unstated']?.({
      ...judgement,
      reason: 'base-unstated',
      stated: null,
      found: null,
      details: { basedOn: '17-220' },
    }),
  ).toBe('Train and barrel are taken from the base, 17-220.')
})

it('says what may have changed places where the years run backward', () => {
  expect(
    recordFindings['years-backward']?.({ ...judgement, reason: 'years-backward', stated: 1962, found: 1938 }),
  ).toBe(
    'First year 1962, last year 1938: a caliber cannot end before it begins. Look whether the two, or two digits, have changed places.',
  )
})
