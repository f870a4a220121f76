import Fraction from 'fraction.js'
import { expect, it } from 'vitest'
import { asWritten, exactValue, printedSpan, sideOf } from '../../../core/proofs/exact-value.ts'
import { plain } from '../../../core/quantities/plain.ts'
import { readQuantity } from '../../../core/quantities/read-quantity.ts'

it('takes the chosen reading before the number', () => {
  const quantity = { value: 0.33, exact: new Fraction(1, 3), unit: 'ratio', halfStep: 0 } as const
  const reading = { printed: '1/3', value: 0.33, quantity }
  const chosen = { hoursPerCentreTurn: [{ ...reading, chosen: true }] }
  expect(exactValue(chosen, 'hoursPerCentreTurn', 0.33).toFraction()).toBe('1/3')
  const other = { hoursPerCentreTurn: [{ ...reading, chosen: false }] }
  expect(exactValue(other, 'hoursPerCentreTurn', 0.33).toFraction()).toBe('33/100')
})

it('lets fractions decide where binary numbers lie on the wrong side of an edge', () => {
  expect(1.13 - 1.1).toBeLessThan(0.03 + 1e-12)
  expect(sideOf(1.13 - 1.1, 0.03, () => new Fraction('1.13').sub('1.1'))).toBe(0)
  expect(sideOf(0.2, 0.03, () => new Fraction(1, 5))).toBe(1)
})

it('writes decimals as numbers and other fractions as whole and part', () => {
  expect(asWritten(new Fraction(57, 5))).toBe(11.4)
  expect(asWritten(new Fraction(29920, 3))).toBe('9973 1/3')
  expect(plain(1.6 - 1.5)).toBe(0.1)
})

it('takes a ratio of many decimals for the fraction that it was cut off from', () => {
  const typed = (printed: string) => {
    const read = readQuantity('ratio', printed)
    if (!read.ok) throw new Error(printed)
    const reading = { printed, value: read.quantity.value, quantity: read.quantity, chosen: true }
    return exactValue({ hoursPerCentreTurn: [reading] }, 'hoursPerCentreTurn', reading.value).toFraction()
  }
  expect(typed('1.3333')).toBe('4/3')
  expect(typed('1.3333333333333333')).toBe('4/3')
  expect(typed('1.714286')).toBe('12/7')
  expect(typed('1.7')).toBe('17/10')
  expect(typed('14.4')).toBe('72/5')
})

it('takes the span of a value from its last digit, or from the limits printed', () => {
  const span = (printed: string) => {
    const read = readQuantity('length', printed)
    if (!read.ok) throw new Error(printed)
    const { quantity } = read
    return printedSpan({ hourHandMm: [{ printed, value: quantity.value, quantity, chosen: true }] }, 'hourHandMm')
  }
  expect(span('1.20')).toEqual({ below: 0.005, above: 0.005 })
  expect(span('1.20 +0.012/-0.005')).toEqual({ below: 0.005, above: 0.012 })
  expect(printedSpan({}, 'hourHandMm')).toEqual({ below: 0, above: 0 })
})
