import { expect, it } from 'vitest'
import { usualUncertainty } from '../../../core/springs/compare-strip.ts'
import { observedStrip } from '../../../core/springs/observed-strip.ts'

it('gives what was measured as observations of the library file', () => {
  const strip = { heightMm: 1.5, thicknessMm: 0.1206666, lengthMm: 360, end: 'tongue' } as const
  expect(observedStrip(strip, usualUncertainty, 'weighed')).toEqual([
    { field: 'springHeightMm', measured: '1.5', uncertaintyMm: 0.02, instrument: 'micrometer' },
    { field: 'springThicknessMm', measured: '0.1207', uncertaintyMm: 0.002, instrument: 'micrometer' },
    { field: 'springLengthMm', measured: '360', uncertaintyMm: 5, instrument: 'balance' },
    { field: 'springEnd', measured: 'tongue', instrument: 'eye' },
  ])
})

it('leaves out what was not measured', () => {
  expect(observedStrip({}, usualUncertainty, 'laid-out')).toEqual([])
  expect(observedStrip({ lengthMm: 300 }, usualUncertainty, 'laid-out')).toEqual([
    { field: 'springLengthMm', measured: '300', uncertaintyMm: 5, instrument: 'rule' },
  ])
})
