import Fraction from 'fraction.js'
import { expect } from 'vitest'

/** Thousands set apart by a comma before three digits are one number. */
const plainDigits = (text: string): string => text.replace(/,(?=\d{3})/g, '')

/**
 * The value of a figure as printed: `9,973`, `276.28`, `3.948e-7`, a fraction `4/3` or a whole number with one, `9973 1/3`.
 */
export const printed = (text: string): number => {
  const value = /[/ ]/.test(text) ? new Fraction(plainDigits(text)).valueOf() : Number(plainDigits(text))
  if (text.trim() === '' || Number.isNaN(value)) throw new Error(`“${text}” is no printed figure`)
  return value
}

/**
 * Half a unit of the last digit of a figure as printed: `276.28` stands for anything within 0.005 of it.
 * A fraction stands for itself alone.
 */
export const halfUnit = (text: string): number => {
  if (text.includes('/')) return 0
  const [mantissa = '', power = '0'] = plainDigits(text).split('e')
  const decimals = mantissa.split('.')[1]?.length ?? 0
  return 0.5 * 10 ** (Number(power) - decimals)
}

/** Whether a figure found is the one printed, within half a unit of its last digit. */
const meets = (found: number, text: string): boolean => {
  const stated = printed(text)
  // The last bits of a binary number must not decide at the very edge.
  return Math.abs(found - stated) <= halfUnit(text) * (1 + 1e-9) + Math.abs(stated) * 1e-12
}

/** Holds a figure found to a figure as printed, within half a unit of its last digit. */
export const expectAsPrinted = (found: number, text: string): void => {
  expect(meets(found, text), `found ${found}, printed ${text}`).toBe(true)
}

/** Holds a figure found to differ from a misprint by more than its rounding. */
export const expectNotAsPrinted = (found: number, text: string): void => {
  expect(meets(found, text), `found ${found}, misprinted ${text}`).toBe(false)
}
