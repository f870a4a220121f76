import { expect, it } from 'vitest'
import { copiedSpring } from '../../../core/wording/copied-spring.ts'

const values = { springHeightMm: 2.4, springThicknessMm: 0.185, springLengthMm: 430, barrelInsideMm: 15 }

it('writes the figures in the order, with the mark and the name that are preferred', () => {
  const plain = { order: 'height-thickness-length', decimalMark: ',', withName: false } as const
  expect(copiedSpring(values, 'Verrin 17-220', plain)).toBe('2,40 × 0,185 × 430 mm')
  expect(copiedSpring({ ...values, springEnd: 't-end' }, 'Verrin 17-220', { ...plain, withName: true })).toBe(
    'Verrin 17-220: 2,40 × 0,185 × 430 mm, T-end',
  )
})

it('gives no unit where the figures have several', () => {
  const order = 'tenths-hundredths-length'
  expect(copiedSpring(values, '', { order, decimalMark: '.', withName: false })).toBe('24 × 18.5 × 430')
})

it('keeps a dash in the place of a figure that is not stated', () => {
  const order = 'height-thickness-length-barrel'
  const { springThicknessMm: _, ...short } = values
  expect(copiedSpring(short, '', { order, decimalMark: '.', withName: false })).toBe('2.40 × – × 430 × 15.0 mm')
})
