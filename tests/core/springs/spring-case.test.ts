import fc from 'fast-check'
import { expect, it } from 'vitest'
import { springCoils, springFill } from '../../../core/formulas/barrel.ts'
import { torqueFullWindRatio, torqueRateRatio } from '../../../core/formulas/spring-torque.ts'
import { emptyCase, fillCase, springTask } from '../../../core/springs/spring-case.ts'

const size = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true })

it('gives the coils, fill and torque that the formulas give', () => {
  fc.assert(
    fc.property(
      size(5, 20),
      size(0.2, 0.45),
      size(0.05, 0.25),
      size(100, 700),
      size(0.5, 3),
      (inside, ratio, e, l, h) => {
        const values = {
          barrelInsideMm: inside,
          barrelArborMm: inside * ratio,
          springHeightMm: 1.5,
          springThicknessMm: 0.12,
          springLengthMm: 400,
        }
        const spring = { supplierRef: 'A', heightMm: h, thicknessMm: e, lengthMm: l }
        const found = fillCase(emptyCase(), springTask(values), spring)
        const sizes = { ...values, springThicknessMm: e, springLengthMm: l }
        const specified = { heightMm: 1.5, thicknessMm: 0.12, lengthMm: 400 }
        expect(found.fill).toBeCloseTo(springFill(sizes), 9)
        expect(found.torqueRate).toBeCloseTo(torqueRateRatio(spring, specified), 9)
        expect(found.torqueFullWind).toBeCloseTo(torqueFullWindRatio(spring, specified), 9)
        if (found.fill < 1) expect(found.turns).toBeCloseTo(springCoils(sizes).turns, 9)
        else expect(found.turns).toBeNaN()
      },
    ),
  )
})

it('takes a slipping bridle off the barrel twice, and knows nothing of a barrel that the bridle fills', () => {
  const values = {
    barrelInsideMm: 10,
    barrelArborMm: 3,
    springEnd: 'slipping-bridle',
    bridleThicknessMm: 0.12,
  } as const
  expect(springTask(values).wallMm).toBeCloseTo(9.76, 12)
  expect(springTask({ ...values, bridleThicknessMm: 6 }).wallMm).toBeNaN()
})

it('lets nothing follow from an arbor as large as the barrel', () => {
  const task = springTask({ barrelInsideMm: 10, barrelArborMm: 10 })
  const spring = { supplierRef: 'A', heightMm: 1.5, thicknessMm: 0.1, lengthMm: 300 }
  expect(fillCase(emptyCase(), task, spring).fill).toBeNaN()
})

it('counts no more turns towards the hours than the stop work allows', () => {
  const values = { barrelInsideMm: 10, barrelArborMm: 10 / 3, barrelTeeth: 80, centrePinion: 10, stopWorkTurns: 4 }
  const spring = { supplierRef: 'A', heightMm: 1.5, thicknessMm: 0.1, lengthMm: 349.066 }
  const found = fillCase(emptyCase(), springTask(values), spring)
  expect(found.turns).toBeCloseTo(7.8689, 4)
  expect(found.hours).toBe(32)
})
