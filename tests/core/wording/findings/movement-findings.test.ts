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

it('says between which angles most levers lie', () => {
  expect(
    movementFindings['lift-small']?.({
      ...judgement,
      outcome: 'doubtful',
      reason: 'lift-small',
      stated: 30,
      found: null,
      difference: -8,
      details: { least: 38, most: 54, lastPrintYear: 1910 },
    }),
  ).toBe(
    'A lift angle of 30° is small: most levers have 38 to 54°. Books up to 1910 do draw so small ones; state the first year if the caliber is that old, or look the angle up again.',
  )
})
