import { expect, it } from 'vitest'
import { rankSprings } from '../../../core/springs/rank-springs.ts'
import { type SpringReasonCode, springReasons } from '../../../core/springs/spring-reasons.ts'
import { springReason, torqueBand } from '../../../core/wording/spring-reason.ts'

const figures = {
  overMm: 0.1,
  fill: 0.3,
  specified: 'tongue',
  byMm: 0.005,
  torqueRate: 1.15,
  torqueFullWind: 1.0975,
  hours: 30,
  stated: 36,
  clearanceMm: 0.02,
  share: 0.05,
  turns: 7,
}

it.each(Object.keys(springReasons) as SpringReasonCode[])('has a whole sentence for %s', (code) => {
  const sentence = springReason({ code, figures })
  expect(sentence).toMatch(/^[A-Z0-9].*\.$/)
  expect(sentence).not.toMatch(/undefined|NaN/)
})

it('says of a thicker spring what a watchmaker should do instead', () => {
  const specified = { springHeightMm: 1.5, springThicknessMm: 0.105, springLengthMm: 360, springEnd: 'hole' } as const
  const spring = { supplierRef: 'A', heightMm: 1.5, thicknessMm: 0.11, lengthMm: 360, end: 'hole' as const }
  const [ranked] = rankSprings(specified, [spring]).ranked
  expect(ranked?.reasons.map(springReason)[0]).toBe(
    '0.005 mm thicker than specified: about 9.8 to 15 % more torque. The movement was designed for one strength; a tired ' +
      'movement wants cleaning and repair, not force.',
  )
})

it('gives one figure where both bounds are the same, and both senses where they part', () => {
  expect(torqueBand(0.9667, 0.9667)).toBe('3.3 % less')
  expect(torqueBand(0.98, 1.05)).toBe('2 % less to 5 % more')
})
