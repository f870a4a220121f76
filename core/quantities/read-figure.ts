import { readNumber, splitFigures } from './printed-number.ts'
import type { QuantityProblem } from './quantity.ts'
import { longestPrint, tidyPrint } from './tidy-print.ts'

export type FigureRead =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly problem: QuantityProblem }

const fail = (problem: QuantityProblem): FigureRead => ({ ok: false, problem })

/**
 * Reads a figure of the bench that is no field of a caliber: a number with the unit it is asked for in, or none.
 * @example
 * readFigure('12,3 ms', ['ms']) // { ok: true, value: 12.3 }
 */
export const readFigure = (text: string, units: readonly string[]): FigureRead => {
  if (text.length > longestPrint) return fail({ code: 'unreadable', text })
  const tidy = tidyPrint(text).toLowerCase()
  if (tidy === '') return fail({ code: 'empty' })
  const parts = splitFigures(tidy)
  if (!parts) return fail({ code: 'unreadable', text })
  if (parts.rest !== '' && !units.includes(parts.rest)) return fail({ code: 'wrong-unit', text, unit: parts.rest })
  const read = readNumber(parts.figures, 'ask')
  return read.ok ? { ok: true, value: read.number.exact.valueOf() } : fail({ ...read.problem, text } as QuantityProblem)
}

const aDay = ['', '/d', '/day', ' a day', ' per day']
const unitsOf = (words: readonly string[]) => words.flatMap((word) => aDay.map((day) => `${word}${day}`))
const seconds = unitsOf(['s', 'sec', 'seconds'])
const minutes = unitsOf(['min', 'minutes', "'"])
const wholeDay = 86_400

/**
 * Reads what a watch gains in a day, in seconds; minutes where that is said. A loss carries a minus before it.
 * @example
 * readDailyGain('−19 min') // { ok: true, value: -1140 }
 */
export const readDailyGain = (text: string): FigureRead => {
  const [, sign = '', figures = ''] = /^([+-]?)\s*(.*)$/.exec(tidyPrint(text)) ?? []
  const read = readFigure(figures, [...seconds, ...minutes])
  if (!read.ok) return fail(read.problem.code === 'empty' ? read.problem : { ...read.problem, text })
  const inMinutes = minutes.includes(splitFigures(tidyPrint(figures).toLowerCase())?.rest ?? '')
  const value = (sign === '-' ? -1 : 1) * read.value * (inMinutes ? 60 : 1)
  return Math.abs(value) < wholeDay
    ? { ok: true, value }
    : fail({ code: 'impossible', text, value, possible: [1 - wholeDay, wholeDay - 1] })
}
