import { expect, it } from 'vitest'
import { OutsideRange } from '../../../core/formulas/outside-range.ts'
import { lostSpring } from '../../../core/springs/lost-spring.ts'

const barrel = { barrelInsideMm: 10.5, barrelArborMm: 3.4, barrelDepthMm: 1.6 }
const codes = (values: Parameters<typeof lostSpring>[0], turns?: number) =>
  lostSpring(values, turns)?.remarks.map(({ code }) => code)

it('says nothing where the inside of the barrel is not stated', () => {
  expect(lostSpring({ barrelArborMm: 3.4 }, 7)).toBeNull()
})

it('takes the height from the depth, less the play, down to a stock step', () => {
  expect(lostSpring(barrel, 8)?.heightMm).toBe(1.5)
  expect(lostSpring({ ...barrel, barrelDepthMm: 1.64 }, 8)?.heightMm).toBe(1.5)
  expect(lostSpring({ ...barrel, barrelDepthMm: 1.65 }, 8)?.heightMm).toBe(1.55)
  expect(lostSpring({ ...barrel, barrelDepthMm: 0.1 }, 8)?.heightMm).toBeNull()
  expect(lostSpring({ barrelInsideMm: 10.5, barrelArborMm: 3.4 }, 8)?.heightMm).toBeNull()
})

it('adds to the turns that the hours need the slack near let-down', () => {
  const estimate = lostSpring({ ...barrel, barrelTeeth: 80, centrePinion: 10, goingHours: 36 })
  expect(estimate?.remarks[0]).toEqual({
    code: 'turns-from-hours',
    figures: { hours: 36, hoursPerTurn: 8, slack: 1.5, turns: 6 },
  })
  expect(estimate?.exact.thicknessMm).toBeCloseTo(lostSpring(barrel, 6)?.exact.thicknessMm ?? 0, 12)
})

it('goes by the stop work where there is one, and by the proportion of the barrel where nothing else is known', () => {
  expect(codes({ ...barrel, stopWorkTurns: 4, goingHours: 30, barrelTeeth: 80, centrePinion: 10 })?.[0]).toBe(
    'turns-from-stop-work',
  )
  expect(codes(barrel)?.[0]).toBe('turns-from-proportion')
  expect(codes({ ...barrel, goingHours: 36 })?.[0]).toBe('turns-from-proportion')
  expect(lostSpring(barrel)?.exact.thicknessMm).toBeCloseTo(0.12, 12)
})

it('assumes a third of the barrel for a hub that is not stated, and says so', () => {
  const estimate = lostSpring({ barrelInsideMm: 12.4 }, 6.8)
  expect(estimate?.remarks).toContainEqual({ code: 'arbor-assumed', figures: { arborMm: 12.4 / 3 } })
})

it('recomputes turns and length for the stock thickness, and gives the step on either side', () => {
  const estimate = lostSpring(barrel, 8)
  expect(estimate?.thicknessMm).toBe(0.105)
  expect(estimate?.thinner?.thicknessMm).toBe(0.1)
  expect(estimate?.thicker.thicknessMm).toBe(0.11)
  expect(estimate?.thinner?.turns).toBeGreaterThan(estimate?.turns ?? 0)
  expect(estimate?.thicker.turns).toBeLessThan(estimate?.turns ?? 0)
})

it('remarks on a hub that is thin or thick for the strip', () => {
  expect(codes({ ...barrel, barrelArborMm: 1.5 }, 6)).toContain('arbor-thin')
  expect(codes({ ...barrel, barrelArborMm: 4.5 }, 7)).toContain('arbor-thick')
})

it('takes a bridle off the barrel, and remarks on one that is not measured', () => {
  const bridle = { ...barrel, springEnd: 'slipping-bridle' } as const
  expect(codes(bridle, 7)).toContain('bridle-not-stated')
  const measured = lostSpring({ ...bridle, bridleThicknessMm: 0.1 }, 7)
  expect(measured?.exact.thicknessMm).toBeCloseTo(
    lostSpring({ ...barrel, barrelInsideMm: 10.3 }, 7)?.exact.thicknessMm ?? 0,
    12,
  )
})

it('refuses an arbor that fills the barrel', () => {
  expect(() => lostSpring({ barrelInsideMm: 10, barrelArborMm: 10 }, 7)).toThrow(OutsideRange)
  expect(() => lostSpring(barrel, 0)).toThrow(OutsideRange)
})
