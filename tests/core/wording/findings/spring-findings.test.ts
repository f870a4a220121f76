import { expect, it } from 'vitest'
import { springFindings } from '../../../../core/wording/findings/spring-findings.ts'

const judgement = { unit: '', difference: 0, allowed: 0, working: [], outcome: 'disagrees' } as const

it('gives the share of the room that the spring takes', () => {
  expect(springFindings['fill-usual']?.({ ...judgement, reason: 'fill-usual', stated: null, found: 0.4877 })).toBe(
    'The spring takes 48.8 % of the free space, near the half that gives the most turns.',
  )
})

it('warns before a barrel is opened', () => {
  expect(
    springFindings['hours-short']?.({
      ...judgement,
      reason: 'hours-short',
      stated: 36,
      found: 34,
      difference: -2,
      details: { turns: 4.25, hoursPerTurn: 8 },
    }),
  ).toBe(
    '36 h of going is stated; 4.25 turns of the spring (theoretical) at 8 h a turn give 34 h, 2 h too few. Check the barrel teeth and centre pinion, the spring’s sizes and the stated hours. Let the mainspring down fully before opening the barrel, protect your eyes, and follow the maker’s specification.',
  )
})
