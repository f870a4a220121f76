import { expect, it } from 'vitest'
import { orderedSpring } from '../../../core/wording/ordered-spring.ts'

const spring = { heightMm: 1.5, thicknessMm: 0.105, lengthMm: 360, barrelMm: 10.5 }

it.each([
  ['height-thickness-length-barrel', '1,50 × 0,105 × 360 × 10,5 mm'],
  ['tenths-hundredths-length', '15 × 10,5 × 360 (tenths × hundredths × mm), barrel 10,5 mm'],
  ['height-hundredths-barrel', '1,50 × 10,5 × 10,5 (mm × hundredths × barrel in mm), length 360 mm'],
] as const)('says what the figures stand in and what they leave out: %s', (order, text) => {
  expect(orderedSpring(spring, undefined, order, ',')).toBe(text)
})

it('puts the gauge number beside the sizes exactly as printed', () => {
  expect(orderedSpring({ heightMm: 1.7, thicknessMm: 0.14 }, 'No. 12, slit gauge')).toBe(
    '1.70 × 0.14 × – mm, gauge as printed: No. 12, slit gauge',
  )
})
