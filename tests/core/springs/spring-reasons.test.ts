import { expect, it } from 'vitest'
import type { CaliberValues } from '../../../core/record/caliber.ts'
import { rankSprings } from '../../../core/springs/rank-springs.ts'
import { type SpringReasonCode, springReasons } from '../../../core/springs/spring-reasons.ts'
import type { StockSpring } from '../../../core/springs/stock-spring.ts'

const caliber: CaliberValues = {
  barrelInsideMm: 10.5,
  barrelArborMm: 3.4,
  barrelDepthMm: 1.6,
  springHeightMm: 1.5,
  springThicknessMm: 0.105,
  springLengthMm: 360,
  springEnd: 'tongue',
  springMaterial: 'carbon-steel',
  barrelTeeth: 80,
  centrePinion: 10,
  goingHours: 40,
}
const spring: StockSpring = {
  supplierRef: 'A',
  heightMm: 1.5,
  thicknessMm: 0.105,
  lengthMm: 360,
  end: 'tongue',
  material: 'carbon-steel',
}
const judged = (changes: Partial<StockSpring>, values: CaliberValues = {}) => {
  const [ranked] = rankSprings({ ...caliber, ...values }, [{ ...spring, ...changes }]).ranked
  return { verdict: ranked?.verdict, codes: ranked?.reasons.map(({ code }) => code) }
}
const without = (key: keyof CaliberValues): CaliberValues => ({ [key]: undefined }) as CaliberValues

const cases: Readonly<Record<SpringReasonCode, readonly [Partial<StockSpring>, CaliberValues, string]>> = {
  'height-jams': [{ heightMm: 1.601 }, {}, 'does-not-fit'],
  'fill-over': [{ lengthMm: 800 }, {}, 'does-not-fit'],
  'end-no-hold': [{ end: 'hole' }, {}, 'does-not-fit'],
  'not-specified': [{}, without('springThicknessMm'), 'not-advised'],
  thicker: [{ thicknessMm: 0.108 }, {}, 'not-advised'],
  'torque-high': [{ heightMm: 1.58 }, {}, 'not-advised'],
  'torque-low': [{ thicknessMm: 0.095 }, {}, 'not-advised'],
  'hours-short': [{}, { goingHours: 70 }, 'not-advised'],
  'fill-far': [{ lengthMm: 540 }, {}, 'not-advised'],
  'height-unproved': [{ heightMm: 1.55 }, without('barrelDepthMm'), 'not-advised'],
  'height-close': [{ heightMm: 1.575 }, {}, 'acceptable'],
  'height-low': [{ heightMm: 1.39 }, {}, 'not-advised'],
  lower: [{ heightMm: 1.45 }, {}, 'acceptable'],
  higher: [{ heightMm: 1.55 }, {}, 'acceptable'],
  thinner: [{ thicknessMm: 0.1 }, {}, 'acceptable'],
  longer: [{ lengthMm: 368 }, {}, 'acceptable'],
  shorter: [{ lengthMm: 350 }, {}, 'acceptable'],
  'fill-off': [{ lengthMm: 460 }, {}, 'acceptable'],
  'end-alike': [{ end: 'hole-with-brace' }, { springEnd: 'hole' }, 'acceptable'],
  'end-not-known': [{ end: undefined }, {}, 'acceptable'],
  'other-material': [{ material: 'cobalt-nickel' }, {}, 'acceptable'],
  'length-not-specified': [{}, without('springLengthMm'), 'acceptable'],
  'length-not-given': [{ lengthMm: undefined }, {}, 'acceptable'],
  'barrel-not-known': [{}, without('barrelArborMm'), 'as-specified'],
  'none-left': [{ inStock: 0 }, {}, 'as-specified'],
}

it.each(Object.keys(springReasons) as SpringReasonCode[])('gives %s as a reason, with its verdict', (code) => {
  const [changes, values, verdict] = cases[code]
  const found = judged(changes, values)
  expect(found.codes).toContain(code)
  expect(found.verdict).toBe(verdict)
})

it('has nothing to say of the spring that is specified', () => {
  expect(judged({})).toEqual({ verdict: 'as-specified', codes: [] })
})

it('holds its limits at the edge, as the sizes were typed', () => {
  expect(judged({ thicknessMm: 0.1075 }).verdict).toBe('as-specified')
  expect(judged({ thicknessMm: 0.1076 }).codes).toEqual(['thicker'])
  expect(judged({ thicknessMm: 0.1025 }).verdict).toBe('as-specified')
  expect(judged({ thicknessMm: 0.1024 }).codes).toEqual(['thinner'])
  expect(judged({ heightMm: 1.525 }).verdict).toBe('as-specified')
  expect(judged({ heightMm: 1.526 }).codes).toEqual(['higher'])
  expect(judged({ heightMm: 1.4 }).codes).toEqual(['lower'])
  expect(judged({ heightMm: 1.399 }).codes).toEqual(['height-low'])
  expect(judged({ heightMm: 1.6 }).codes).toContain('height-close')
  expect(judged({ lengthMm: 367.2 }).verdict).toBe('as-specified')
})

it('never lets a thicker spring be more than not advised, however well it fits', () => {
  for (const thicknessMm of [0.108, 0.11, 0.115, 0.12]) {
    const { verdict, codes } = judged({ thicknessMm })
    expect(['not-advised', 'does-not-fit']).toContain(verdict)
    expect(codes).toContain('thicker')
  }
})
