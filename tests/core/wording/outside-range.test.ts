import { expect, it } from 'vitest'
import { outsideRangeSentence } from '../../../core/wording/outside-range.ts'

it('says what cannot be and what to do, with the field by its label', () => {
  expect(outsideRangeSentence('arbor-fills-barrel', { barrelInsideMm: 9, barrelArborMm: 9.5 })).toContain('9.5 mm')
  expect(outsideRangeSentence('bridle-fills-barrel', { barrelInsideMm: 9, bridleThicknessMm: 5 })).toContain('5 mm')
  expect(outsideRangeSentence('spring-overfills-barrel', { fill: 1.0743 })).toContain('107.4 %')
  expect(outsideRangeSentence('not-positive', { field: 'barrelArborMm', value: 0 })).toContain('barrel arbor')
})

it('names figures of the bench as a watchmaker does', () => {
  expect(outsideRangeSentence('not-positive', { field: 'liftTimeMs', value: 0 })).toBe(
    'The lift time must be more than nothing. Correct it.',
  )
  expect(
    outsideRangeSentence('lift-outlasts-vibration', { liftTimeMs: 210, longestMs: 200, beatRateVph: 18000 }),
  ).toMatch(/^A lift of 210 ms outlasts a whole vibration, which takes 200 ms at 18.000 vph\. /)
  expect(outsideRangeSentence('swing-within-lift', { amplitudeDeg: 25, liftAngleDeg: 52 })).toMatch(
    /^An amplitude of 25° ends within a lift angle of 52°/,
  )
})

it('says that no figure is in print rather than doubt what is stated', () => {
  expect(outsideRangeSentence('no-usual-lift', { escapement: 'cylinder', liftAngleDeg: 40 })).toBe(
    'What lift angle is usual for this escapement was not to be had in print, so the 40° are neither confirmed nor doubted.',
  )
})
