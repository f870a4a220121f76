import { expect, it } from 'vitest'
import type { CaliberValues } from '../../../core/record/caliber.ts'
import { fitSpring } from '../../../core/springs/fit.ts'

const watch: CaliberValues = {
  barrelInsideMm: 12,
  barrelArborMm: 4,
  barrelDepthMm: 1.6,
  springHeightMm: 1.5,
  springThicknessMm: 0.12,
  springLengthMm: 400,
  barrelTeeth: 72,
  centrePinion: 12,
}

it('gives every figure of a caliber that states all (vector F2 of tests/published/mainsprings.test.ts)', () => {
  expect(fitSpring(watch)).toEqual({
    coilsDown: expect.closeTo(12.0663, 4),
    coilsWound: expect.closeTo(19.9231, 4),
    turns: expect.closeTo(7.8568, 4),
    fill: expect.closeTo(0.47746, 5),
    bestLengthMm: expect.closeTo(418.879, 3),
    mostTurns: expect.closeTo(7.8689, 4),
    hoursPerTurn: 6,
    goingHours: expect.closeTo(47.141, 3),
    heightClearanceMm: 0.1,
    arborToThickness: expect.closeTo(33.333, 3),
    lengthToThickness: expect.closeTo(3333.333, 3),
  })
})

it('is null in everything for a caliber that states nothing', () => {
  expect(new Set(Object.values(fitSpring({})))).toEqual(new Set([null]))
})

it('gives the fill of a spring that cannot be got in, and no turns or hours', () => {
  expect(fitSpring({ ...watch, springLengthMm: 900, stopWorkTurns: 4 })).toMatchObject({
    fill: expect.closeTo(1.0743, 4),
    turns: null,
    coilsDown: null,
    goingHours: null,
    bestLengthMm: expect.closeTo(418.879, 3),
  })
})

it('gives nothing of an arbor as large as its barrel but the plain proportions', () => {
  expect(fitSpring({ ...watch, barrelArborMm: 12 })).toMatchObject({
    fill: null,
    mostTurns: null,
    arborToThickness: 100,
    hoursPerTurn: 6,
  })
})

it('goes by the stop work where it allows fewer turns, or where the spring is not known', () => {
  expect(fitSpring({ ...watch, stopWorkTurns: 4 }).goingHours).toBe(24)
  expect(fitSpring({ barrelTeeth: 72, centrePinion: 12, stopWorkTurns: 4 }).goingHours).toBe(24)
  expect(fitSpring({ ...watch, stopWorkTurns: 9 }).goingHours).toBeCloseTo(47.141, 3)
})

it('takes a slipping bridle off the barrel', () => {
  const bridled = fitSpring({ ...watch, springEnd: 'slipping-bridle', bridleThicknessMm: 0.12 })
  expect(bridled.fill).toBeGreaterThan(0.4775)
  expect(fitSpring({ ...watch, springEnd: 'slipping-bridle', bridleThicknessMm: 6 }).turns).toBeNull()
})
