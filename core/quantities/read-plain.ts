import type Fraction from 'fraction.js'
import { type PrintedNumber, readNumber, splitFigures } from './printed-number.ts'
import type { PrintedUnit, Quantity, QuantityProblem, QuantityRead } from './quantity.ts'
import { longestPrint, tidyPrint } from './tidy-print.ts'

type Figures = { ok: true; number: PrintedNumber } | { ok: false; problem: QuantityProblem }

/** One figure, with a unit word or without, where the kind has a single unit. */
const readFigure = (text: string, unit: RegExp): Figures => {
  if (text.length > longestPrint) return { ok: false, problem: { code: 'unreadable', text } }
  const tidy = tidyPrint(text).toLowerCase()
  if (tidy === '') return { ok: false, problem: { code: 'empty' } }
  const parts = splitFigures(tidy)
  if (!parts) return { ok: false, problem: { code: 'unreadable', text } }
  if (parts.rest !== '' && !unit.test(parts.rest))
    return { ok: false, problem: { code: 'wrong-unit', text, unit: parts.rest } }
  const read = readNumber(parts.figures, 'ask')
  return read.ok ? read : { ok: false, problem: { ...read.problem, text } as QuantityProblem }
}

const quantity = (exact: Fraction, unit: PrintedUnit, halfStep: number): { ok: true; quantity: Quantity } => ({
  ok: true,
  quantity: { value: exact.valueOf(), exact, unit, halfStep },
})

/** Reads an angle in degrees: `52`, `52°`, `52.5 deg`. */
export const readAngle = (text: string): QuantityRead => {
  const read = readFigure(text, /^(?:°|º|deg\.?|degr[eéè]+s?|grad|graden)$/)
  if (!read.ok) return read
  return quantity(read.number.exact, 'degree', read.number.denominator ? 0 : read.number.step.valueOf() / 2)
}

/** Reads a count, which is a whole number: `80`, `80 teeth`. */
export const readCount = (text: string): QuantityRead => {
  const read = readFigure(
    text,
    /^(?:t|teeth|tooth|leaves|leaf|jewels?|dents?|ailes?|rubis|pierres|zähne|triebe|steine|tanden|stenen|z)\.?$/,
  )
  if (!read.ok) return read
  if (read.number.exact.d !== 1n) return { ok: false, problem: { code: 'not-whole', text } }
  return quantity(read.number.exact, 'count', 0)
}

/** Reads a ratio or a number of turns: `4/3`, `1 1/3`, `1.5`. Whole numbers and fractions are exact. */
export const readRatio = (text: string): QuantityRead => {
  const read = readFigure(text, /^(?:turns?|tours?|umgänge|umdrehungen|omwentelingen)$/)
  if (!read.ok) return read
  const { exact, step, whole, denominator } = read.number
  return quantity(exact, 'ratio', whole || denominator ? 0 : step.valueOf() / 2)
}
