import { expect } from 'vitest'

/**
 * Half a unit of the last digit of a figure as printed: `276.28` stands for anything within 0.005 of it.
 * Thousands may be set apart by a comma before three digits, and a power of ten may follow (`3.948e-7`).
 */
export const halfUnit = (printed: string): number => {
  const [mantissa = '', power = '0'] = printed.replace(/,(?=\d{3})/g, '').split('e')
  const decimals = mantissa.split('.')[1]?.length ?? 0
  return 0.5 * 10 ** (Number(power) - decimals)
}

/** Holds a figure found to a figure as printed, within half a unit of its last digit. */
export const expectAsPrinted = (found: number, printed: string): void => {
  const stated = Number(printed.replace(/,(?=\d{3})/g, ''))
  // The last bit of a binary number must not decide at the very edge.
  const off = Math.abs(found - stated) * (1 - 1e-9)
  expect(off, `found ${found}, printed ${printed}`).toBeLessThanOrEqual(halfUnit(printed))
}
