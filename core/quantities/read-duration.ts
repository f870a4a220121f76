import Fraction from 'fraction.js'
import { readNumber } from './printed-number.ts'
import type { QuantityProblem, QuantityRead } from './quantity.ts'
import { longestPrint, tidyPrint } from './tidy-print.ts'

const figure = String.raw`(\d[\d.,' ]*(?:\d+ ?\/ ?\d+)?)`
const dayWord = String.raw`(?:days?|d|jours?|j|tagen?|tage?|tg|dag(?:en)?)\.?`
const hourWord = String.raw`(?:hours?|hrs?|h|heures?|stunden?|std|uur|uren)\.?`
const days = new RegExp(`^${figure}[ -]*${dayWord}(?: *(?:and|et|und|en|,)? *${figure}[ -]*${hourWord})?$`)
const hours = new RegExp(`^${figure}[ -]*(${hourWord}|)$`)

/**
 * Reads a duration into hours: `36`, `36 h`, `1d 12h`, `8 days`. A whole number of days may lie half a day off.
 * @example
 * readDuration('four days').ok // false
 */
export const readDuration = (text: string): QuantityRead => {
  const fail = (problem: QuantityProblem): QuantityRead => ({ ok: false, problem })
  if (text.length > longestPrint) return fail({ code: 'unreadable', text })
  const tidy = tidyPrint(text).toLowerCase()
  if (tidy === '') return fail({ code: 'empty' })
  const inDays = days.exec(tidy)
  const inHours = inDays ? null : hours.exec(tidy)
  if (!inDays && !inHours) {
    const word = /^[\d.,]+ ?(\p{L}+)\.?$/u.exec(tidy)?.[1]
    return fail(word ? { code: 'wrong-unit', text, unit: word } : { code: 'unreadable', text })
  }
  let total = new Fraction(0)
  let halfStep = 0
  const printed: readonly (readonly [string | undefined, number])[] = [
    [inDays?.[1], 24],
    [inDays ? inDays[2] : inHours?.[1], 1],
  ]
  for (const [digits, factor] of printed) {
    if (digits === undefined) continue
    const read = readNumber(digits.trim(), 'ask')
    if (!read.ok) return fail({ ...read.problem, text } as QuantityProblem)
    total = total.add(read.number.exact.mul(factor))
    halfStep = read.number.denominator ? 0 : (read.number.step.valueOf() * factor) / 2
  }
  return { ok: true, quantity: { value: total.valueOf(), exact: total, unit: inDays ? 'day' : 'hour', halfStep } }
}
