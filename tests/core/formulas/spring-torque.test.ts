import { describe, expect, it } from 'vitest'
import { OutsideRange } from '../../../core/formulas/outside-range.ts'
import { torqueFullWindRatio, torqueRateRatio } from '../../../core/formulas/spring-torque.ts'

const base = { heightMm: 1.5, thicknessMm: 0.105, lengthMm: 360 }

describe('the torque of a strip against another', () => {
  it('is one for the same strip', () => {
    expect(torqueRateRatio(base, base)).toBe(1)
    expect(torqueFullWindRatio(base, base)).toBe(1)
  })

  it('goes with the height, and in each turn with the length turned over', () => {
    expect(torqueRateRatio({ ...base, heightMm: 3 }, base)).toBeCloseTo(2, 12)
    expect(torqueFullWindRatio({ ...base, heightMm: 3 }, base)).toBeCloseTo(2, 12)
    expect(torqueRateRatio({ ...base, lengthMm: 720 }, base)).toBeCloseTo(0.5, 12)
  })

  it('goes with the third power of the thickness in each turn, with the second at full wind', () => {
    expect(torqueRateRatio({ ...base, thicknessMm: 0.21 }, base)).toBeCloseTo(8, 12)
    expect(torqueFullWindRatio({ ...base, thicknessMm: 0.21 }, base)).toBeCloseTo(4, 12)
  })

  it.each(['heightMm', 'thicknessMm', 'lengthMm'] as const)('refuses a strip without %s', (key) => {
    expect(() => torqueRateRatio({ ...base, [key]: 0 }, base)).toThrow(OutsideRange)
    expect(() => torqueRateRatio(base, { ...base, [key]: -1 })).toThrow(OutsideRange)
  })

  it('refuses a strip without height or thickness at full wind', () => {
    expect(() => torqueFullWindRatio({ ...base, heightMm: 0 }, base)).toThrow(OutsideRange)
    expect(() => torqueFullWindRatio({ ...base, thicknessMm: 0 }, base)).toThrow(OutsideRange)
  })
})
