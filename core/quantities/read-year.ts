import Fraction from 'fraction.js'
import type { QuantityRead } from './quantity.ts'
import { tidyPrint } from './tidy-print.ts'

/** How far a year marked `circa` may lie from the one printed: common practice in dating watches. */
const circaYears = 5

/** Reads a year: `1926`, or one marked as uncertain, `c. 1926`, `circa`, `um`, `vers`, `ca.`. */
export const readYear = (text: string): QuantityRead => {
  const tidy = tidyPrint(text.slice(0, 80)).toLowerCase()
  if (tidy === '') return { ok: false, problem: { code: 'empty' } }
  const found = /^(c|ca|circa|about|around|um|vers|env|environ|omstreeks|rond|~|≈)?\.? ?(\d{3,4})(\?)?$/.exec(tidy)
  if (!found) return { ok: false, problem: { code: 'unreadable', text } }
  const exact = new Fraction(Number(found[2]))
  const uncertain = found[1] !== undefined || found[3] !== undefined
  return {
    ok: true,
    quantity: { value: exact.valueOf(), exact, unit: 'year', halfStep: uncertain ? circaYears : 0 },
  }
}
