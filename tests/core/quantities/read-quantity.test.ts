import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { MeasuredKind } from '../../../core/fields/field.ts'
import { readQuantity } from '../../../core/quantities/read-quantity.ts'

const kinds: readonly MeasuredKind[] = ['length', 'rate', 'angle', 'duration', 'count', 'ratio', 'year']
const anyKind = fc.constantFrom(...kinds)
const readValue = (kind: MeasuredKind, text: string) => {
  const read = readQuantity(kind, text)
  return read.ok ? read.quantity.value : read.problem.code
}
const printLike = fc.string({
  unit: fc.constantFrom(...'0123456789.,\'"/ ±+-…¾‴µmhHlig°dc°zinsxto'.split('')),
  maxLength: 20,
})

describe('each kind is read into its canonical unit (contract, section 1)', () => {
  test.each([
    ['rate', '18 000', 18000],
    ['rate', '18\u2009000', 18000],
    ['rate', '18\u00a0000', 18000],
    ['rate', '18\u202f000', 18000],
    ['rate', "18'000", 18000],
    ['rate', '18’000', 18000],
    ['rate', '18,000', 18000],
    ['rate', '5/s', 18000],
    ['rate', '300/min', 18000],
    ['rate', '2.5 Hz', 18000],
    ['rate', '2,5 Hz', 18000],
    ['rate', '18000 vph', 18000],
    ['rate', '18 000 A/h', 18000],
    ['rate', '18,000 beats per hour', 18000],
    ['rate', '18000 rpm', 'wrong-unit'],
    ['angle', '52', 52],
    ['angle', '52°', 52],
    ['duration', '36', 36],
    ['duration', '36 h', 36],
    ['duration', '1d 12h', 36],
    ['duration', '8 days', 192],
    ['duration', '8 weeks', 'wrong-unit'],
    ['count', '80', 80],
    ['count', '80 teeth', 80],
    ['count', '80.5', 'not-whole'],
    ['year', '1926', 1926],
    ['year', 'c. 1926', 1926],
    ['year', 'circa 1926', 1926],
    ['year', 'ca. 1926', 1926],
    ['year', 'um 1926', 1926],
    ['year', 'vers 1926', 1926],
    ['ratio', '4/3', 4 / 3],
    ['ratio', '1 1/3', 4 / 3],
    ['ratio', '1.5', 1.5],
    ['ratio', '4/0', 'zero-denominator'],
  ] as const)('%s %s is %s', (kind, text, expected) => {
    expect(readValue(kind, text)).toBe(expected)
  })

  test('a value out of the possible range is refused, and so is a limit out of it', () => {
    expect(readQuantity('length', '4', [0.01, 3])).toMatchObject({ problem: { code: 'impossible', value: 4 } })
    expect(readQuantity('length', '0.02 ±0.05', [0.01, 3])).toMatchObject({ problem: { code: 'impossible' } })
    expect(readQuantity('length', '3', [0.01, 3]).ok).toBe(true)
  })

  test('a bare figure has the same exact fraction, even after the object was copied', () => {
    const read = readQuantity('length', '0.18')
    expect(read.ok && { ...read.quantity }.exact.toFraction()).toBe('9/50')
  })
})

describe('properties of reading', () => {
  test('no text makes it throw', () => {
    fc.assert(
      fc.property(anyKind, fc.oneof(fc.string({ unit: 'binary', maxLength: 100 }), printLike), (kind, text) => {
        const read = readQuantity(kind, text, [0, 1e6])
        if (read.ok) expect(Number.isFinite(read.quantity.value)).toBe(true)
      }),
      { numRuns: 3000 },
    )
  })

  test('a decimal comma equals a decimal point', () => {
    const decimals = fc.integer({ min: 0, max: 99 }).map((n) => String(n).padStart(2, '0'))
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 9999 }),
        decimals,
        fc.constantFrom('', ' mm', "'''", ' in'),
        (n, d, unit) => {
          expect(readValue('length', `${n},${d}${unit}`)).toBe(readValue('length', `${n}.${d}${unit}`))
        },
      ),
    )
  })

  test('a comma before exactly three digits of a length is refused as ambiguous', () => {
    const three = fc.integer({ min: 0, max: 999 }).map((n) => String(n).padStart(3, '0'))
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 999 }), three, (n, d) => {
        expect(readValue('length', `${n},${d}`)).toBe('ambiguous')
      }),
    )
  })

  test('the exact fraction and the value are one number, and limits enclose the nominal', () => {
    fc.assert(
      fc.property(anyKind, printLike, (kind, text) => {
        const read = readQuantity(kind, text)
        if (!read.ok) return
        const { exact, value, low, high } = read.quantity
        expect(exact.valueOf()).toBe(value)
        if (low !== undefined && high !== undefined) expect(low).toBeLessThanOrEqual(high)
      }),
      { numRuns: 3000 },
    )
  })

  test('a number with an exponent cannot be read, and its e is not taken for a unit', () => {
    for (const text of ['1e-9', '1.8e4', '1E+300', ' 5e-7 ']) {
      expect(readQuantity('length', text)).toEqual({ ok: false, problem: { code: 'unreadable', text } })
      expect(readQuantity('rate', text)).toEqual({ ok: false, problem: { code: 'unreadable', text } })
    }
  })
})
