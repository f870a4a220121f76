import { expect, it } from 'vitest'
import { detail, found, off, stated } from '../../../../core/wording/findings/judged.ts'

const judgement = {
  outcome: 'doubtful',
  stated: 18000,
  found: 17999.456,
  difference: -0.544,
  allowed: 0.5,
  unit: 'vph',
  working: [],
  reason: 'rate-near',
  details: { arbor: 'fourth', turns: 7.123 },
} as const

it('shows the figures of a judgement rounded and without a sign', () => {
  expect([stated(judgement), found(judgement), off(judgement), off(judgement, 1)]).toEqual([
    '18 000',
    '17 999.46',
    '0.54',
    '0.5',
  ])
})

it('shows a detail as text or rounded, and nothing where there is none', () => {
  expect(['arbor', 'turns', 'none'].map((key) => detail(judgement, key))).toEqual(['fourth', '7.12', ''])
})
