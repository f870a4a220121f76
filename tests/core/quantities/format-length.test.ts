import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { formatLength } from '../../../core/quantities/format-length.ts'
import { formatQuantity } from '../../../core/quantities/format-quantity.ts'
import { readQuantity } from '../../../core/quantities/read-quantity.ts'

const ligne = 31250 / 13853
const back = (text: string): number => {
  const read = readQuantity('length', text)
  return read.ok ? read.quantity.value : Number.NaN
}

describe('a length is written as the trade prints it', () => {
  test.each([
    [8.75 * ligne, 'ligne', '8¾‴'],
    [17 * ligne, 'ligne', '17‴'],
    [11.125 * ligne, 'ligne', '11⅛‴'],
    [38.34909, 'mm', '38.35 mm'],
    [0.105, 'mm', '0.105 mm'],
    [0.18034, 'inch', '0.0071 in'],
  ] as const)('%d mm in %s is %s', (mm, unit, text) => {
    expect(formatLength(mm, unit)).toBe(text)
  })

  test.each([
    ['mm', 0.0051],
    ['ligne', ligne / 16 + 1e-9],
    ['inch', 0.00005 * 25.4 + 1e-9],
  ] as const)('what is written in %s reads back within its rounding', (unit, rounding) => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 400, noNaN: true }), (mm) => {
        expect(Math.abs(back(formatLength(mm, unit)) - mm)).toBeLessThanOrEqual(rounding)
      }),
    )
  })

  test('every eighth of a ligne comes back exactly', () => {
    fc.assert(
      fc.property(fc.integer({ min: 16, max: 400 }), (eighths) => {
        expect(back(formatLength((eighths / 8) * ligne, 'ligne'))).toBeCloseTo((eighths / 8) * ligne, 10)
      }),
    )
  })
})

describe('a value is written in its canonical unit', () => {
  test('thousands of a rate are set apart by a narrow space', () => {
    expect(formatQuantity('rate', 18000)).toBe('18\u202f000')
    expect(formatQuantity('ratio', 4 / 3)).toBe('1 1/3')
    expect(formatQuantity('angle', 52)).toBe('52°')
    expect(formatQuantity('duration', 36)).toBe('36 h')
  })

  test('whole rates, counts and years read back as they were', () => {
    fc.assert(
      fc.property(fc.constantFrom('rate', 'count', 'year'), fc.integer({ min: 1000, max: 9999 }), (kind, value) => {
        const read = readQuantity(kind, formatQuantity(kind, value))
        expect(read.ok && read.quantity.value).toBe(value)
      }),
    )
  })
})
