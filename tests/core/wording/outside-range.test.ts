import { expect, it } from 'vitest'
import { outsideRangeSentence } from '../../../core/wording/outside-range.ts'

it('says what cannot be and what to do, with the field by its label', () => {
  expect(outsideRangeSentence('arbor-fills-barrel', { barrelInsideMm: 9, barrelArborMm: 9.5 })).toContain('9.5 mm')
  expect(outsideRangeSentence('bridle-fills-barrel', { barrelInsideMm: 9, bridleThicknessMm: 5 })).toContain('5 mm')
  expect(outsideRangeSentence('spring-overfills-barrel', { fill: 1.0743 })).toContain('107.4 %')
  expect(outsideRangeSentence('not-positive', { field: 'barrelArborMm', value: 0 })).toContain('barrel arbor')
})
