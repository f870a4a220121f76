import { expect, it } from 'vitest'
import { compareStrip } from '../../../core/springs/compare-strip.ts'

const caliber = {
  barrelInsideMm: 10.5,
  barrelArborMm: 3.4,
  barrelDepthMm: 1.6,
  springHeightMm: 1.5,
  springThicknessMm: 0.105,
  springLengthMm: 360,
  springEnd: 'tongue',
  barrelTeeth: 80,
  centrePinion: 10,
} as const

it('knows the spring that the maker specified', () => {
  const found = compareStrip(caliber, { heightMm: 1.5, thicknessMm: 0.106, lengthMm: 362, end: 'tongue' })
  expect(found.verdict).toBe('specified')
  expect([found.height.verdict, found.thickness.verdict, found.length.verdict, found.end]).toEqual([
    'same',
    'same',
    'same',
    'same',
  ])
})

it('tells a thicker strip, and what it does to turns, hours and torque', () => {
  const found = compareStrip(caliber, { thicknessMm: 0.11 })
  expect(found.verdict).toBe('foreign')
  expect(found.thickness).toEqual({ verdict: 'more', specified: 0.105, measured: 0.11, difference: 0.005 })
  expect(found.specified.turns).toBeCloseTo(8.131, 3)
  expect(found.found.turns).toBeCloseTo(7.762, 3)
  expect(found.torqueRate).toBeCloseTo(1.1498, 4)
  expect(found.torqueFullWind).toBeCloseTo(1.0975, 4)
})

it('tells a longer and a shorter strip, a lower one and one with an end that does not hold', () => {
  expect(compareStrip(caliber, { lengthMm: 400 }).length.verdict).toBe('more')
  expect(compareStrip(caliber, { lengthMm: 320 }).length.verdict).toBe('less')
  expect(compareStrip(caliber, { heightMm: 1.4 }).height.verdict).toBe('less')
  expect(compareStrip(caliber, { thicknessMm: 0.105, end: 'hole' }).verdict).toBe('foreign')
})

it('cannot tell where the reading is not sure enough', () => {
  const found = compareStrip(caliber, { thicknessMm: 0.109 })
  expect(found.thickness.verdict).toBe('cannot-tell')
  expect(found.verdict).toBe('cannot-tell')
  const surer = { heightMm: 0.02, thicknessMm: 0.0005, lengthMm: 5 }
  expect(compareStrip(caliber, { thicknessMm: 0.109 }, surer).thickness.verdict).toBe('more')
})

it('holds the edge as the sizes were typed', () => {
  expect(compareStrip(caliber, { thicknessMm: 0.1075 }).thickness.verdict).toBe('same')
  expect(compareStrip(caliber, { thicknessMm: 0.1095 }).thickness.verdict).toBe('cannot-tell')
  expect(compareStrip(caliber, { thicknessMm: 0.1096 }).thickness.verdict).toBe('more')
})

it('says so where nothing was measured or nothing is specified', () => {
  expect(compareStrip(caliber, {})).toMatchObject({ verdict: 'cannot-tell', thickness: { verdict: 'not-measured' } })
  expect(compareStrip({}, { thicknessMm: 0.1 })).toMatchObject({
    verdict: 'cannot-tell',
    thickness: { verdict: 'not-specified' },
    torqueRate: null,
  })
})
