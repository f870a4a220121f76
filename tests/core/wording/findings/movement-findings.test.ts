import { expect, it } from 'vitest'
import { movementFindings } from '../../../../core/wording/findings/movement-findings.ts'

const judgement = { unit: 'mm', allowed: null, working: [], outcome: 'disagrees' } as const

it('says which hand needs the larger hole', () => {
  expect(
    movementFindings['hands-crossed']?.({
      ...judgement,
      reason: 'hands-crossed',
      stated: 1.75,
      found: 1.05,
      difference: -0.7,
      details: { outer: 'hourHandMm', inner: 'minuteHandMm' },
    }),
  ).toBe(
    'The hole of the hour hand is 1.05 mm, that of the minute hand 1.75 mm, but the pipe of the hour hand stands outside that of the minute hand and needs the larger hole. Look whether the two have changed places, or measure both again.',
  )
})
