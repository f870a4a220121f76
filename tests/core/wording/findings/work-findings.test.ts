import { expect, it } from 'vitest'
import { workFindings } from '../../../../core/wording/findings/work-findings.ts'

const judgement = {
  unit: '',
  stated: 3,
  found: 3,
  difference: null,
  allowed: null,
  working: [],
  outcome: 'doubtful',
} as const

it('warns before a barrel bridge is lifted under power', () => {
  expect(
    workFindings['strip-not-let-down']?.({
      ...judgement,
      reason: 'strip-not-let-down',
      details: { part: 'barrel bridge' },
    }),
  ).toBe(
    'Nothing says to let the mainspring down before the step “barrel bridge”. Put it first, or into the caution of that step. Let the mainspring down fully before opening the barrel, protect your eyes, and follow the maker’s specification.',
  )
})

it('names a loop, and a part that waits for itself', () => {
  const loop = { ...judgement, outcome: 'disagrees', reason: 'strip-loop' } as const
  expect(workFindings['strip-loop']?.({ ...loop, details: { parts: 2, loop: 'a → b → a' } })).toContain('a → b → a')
  expect(workFindings['strip-loop']?.({ ...loop, details: { parts: 1, part: 'dial' } })).toBe(
    'The step “dial” is said to come after itself. Correct what it comes after.',
  )
})

it('lists the places that were left out, and puts the maker first', () => {
  expect(
    workFindings['oiling-left-out']?.({
      ...judgement,
      reason: 'oiling-left-out',
      details: { places: 'third pivots; balance pivots' },
    }),
  ).toBe(
    'Not in the list of oiling: third pivots and balance pivots. Add what is oiled there, or mark the place as dry. The maker’s own specification comes first.',
  )
})
