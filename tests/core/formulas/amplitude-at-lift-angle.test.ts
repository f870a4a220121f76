import { expect, it } from 'vitest'
import { amplitude } from '../../../core/formulas/amplitude.ts'
import { amplitudeAtLiftAngle } from '../../../core/formulas/amplitude-at-lift-angle.ts'

it('gives what the formula gives with the other lift angle', () => {
  const reading = { liftAngleDeg: 52, beatRateVph: 18000, liftTimeMs: 12 }
  expect(amplitudeAtLiftAngle(amplitude(reading), 52, 48)).toBeCloseTo(amplitude({ ...reading, liftAngleDeg: 48 }), 9)
})

it.each([
  ['amplitudeDeg', 0, 52, 51],
  ['liftAngleDeg', 270, 0, 51],
  ['liftAngleDeg', 270, 52, 0],
] as const)('refuses a %s of nothing', (field, shown, lift, other) => {
  expect(() => amplitudeAtLiftAngle(shown, lift, other)).toThrow(
    expect.objectContaining({ code: 'not-positive', details: { field, value: 0 } }),
  )
})
