import { expect, it } from 'vitest'
import { depthFindings } from '../../../../core/wording/findings/depth-findings.ts'

const judgement = { unit: 'mm', working: [], outcome: 'disagrees' } as const

it('names the depth, both modules and what the rounding bears', () => {
  expect(
    depthFindings['module-differs']?.({
      ...judgement,
      reason: 'module-differs',
      stated: 0.12,
      found: 0.12471,
      difference: 0.00471,
      allowed: 0.00008,
      details: {
        driver: 'third wheel',
        driven: 'fourth pinion',
        first: 'driverPitchMm',
        second: 'centreDistanceMm',
        depths: 2,
        unchecked: 1,
      },
    }),
  ).toBe(
    'At the depth of third wheel and fourth pinion the driver’s pitch diameter gives a module of 0.12 mm and the centre distance one of 0.12471 mm: 0.00471 mm apart, where the printed rounding bears 0.00008 mm. Look the sizes up again, count wheel and pinion, and see that pitch diameters are stated and not those over the points. One depth could not be checked for want of counts or sizes.',
  )
})
