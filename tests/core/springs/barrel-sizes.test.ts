import { expect, it } from 'vitest'
import { coilSpace } from '../../../core/springs/barrel-sizes.ts'

it('takes the bridle off only where it slips and is measured', () => {
  expect(coilSpace({ springEnd: 'slipping-bridle', bridleThicknessMm: 0.12 }, 10)).toBeCloseTo(9.76)
  expect(coilSpace({ springEnd: 'slipping-bridle' }, 10)).toBe(10)
  expect(coilSpace({ springEnd: 'tongue', bridleThicknessMm: 0.12 }, 10)).toBe(10)
})
