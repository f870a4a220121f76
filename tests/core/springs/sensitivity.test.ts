import { expect, it } from 'vitest'
import { sensitivities } from '../../../core/springs/sensitivity.ts'

const sizes = { barrelInsideMm: 10, barrelArborMm: 10 / 3, springThicknessMm: 0.1, springLengthMm: 349.066 }

it('says which size must be known best', () => {
  expect(sensitivities(sizes).map(({ field }) => field)).toEqual([
    'springThicknessMm',
    'barrelArborMm',
    'barrelInsideMm',
    'springLengthMm',
  ])
})

it('is empty where a size is missing or the sizes do not go together', () => {
  expect(sensitivities({ ...sizes, barrelArborMm: 10 })).toEqual([])
  for (const key of Object.keys(sizes)) expect(sensitivities({ ...sizes, [key]: undefined })).toEqual([])
})
