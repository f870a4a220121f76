import type { Grouping } from './printed-number.ts'
import { readNumber, splitFigures } from './printed-number.ts'
import type { PrintedUnit, QuantityProblem, QuantityRead } from './quantity.ts'
import { longestPrint, tidyPrint } from './tidy-print.ts'

const vibrations = String.raw`(?:v|vibs?\.?|vibrations?|b|beats?|a|alt\.?|alternances?|halbschwingungen|hs|halve slagen)?`
const per = String.raw`\s*(?:\/|per |par |pro |je |an |a |à l')\s*`
const rateUnits: readonly (readonly [
  Extract<PrintedUnit, 'vph' | 'per-second' | 'per-minute' | 'hertz'>,
  number,
  RegExp,
])[] = [
  ['vph', 1, new RegExp(`^(?:vph|bph|${vibrations}${per}(?:h|hr|hour|heure|stunde|std|uur)\\.?)$`)],
  ['per-minute', 60, new RegExp(`^(?:vpm|bpm|${vibrations}${per}(?:min|minute|minuut)\\.?)$`)],
  ['per-second', 3600, new RegExp(`^(?:vps|bps|${vibrations}${per}(?:s|sec|second|seconde|sekunde|sek)\\.?)$`)],
  // A hertz is a full oscillation a second: two vibrations.
  ['hertz', 7200, /^(?:hz|hertz)$/],
]

/**
 * Reads a beat rate into vibrations (half oscillations) an hour. A mark before three digits groups thousands, since
 * no rate is printed to thousandths. A whole number of vibrations or oscillations a second is a count, hence exact.
 * @source forms of print: common practice
 */
export const readRate = (text: string): QuantityRead => {
  const fail = (problem: QuantityProblem): QuantityRead => ({ ok: false, problem })
  if (text.length > longestPrint) return fail({ code: 'unreadable', text })
  const tidy = tidyPrint(text).toLowerCase()
  if (tidy === '') return fail({ code: 'empty' })
  const parts = splitFigures(tidy)
  if (!parts) return fail({ code: 'unreadable', text })
  const found = parts.rest === '' ? rateUnits[0] : rateUnits.find(([, , pattern]) => pattern.test(parts.rest))
  if (!found)
    return fail(
      /\p{L}/u.test(parts.rest) ? { code: 'wrong-unit', text, unit: parts.rest } : { code: 'unreadable', text },
    )
  const [unit, factor] = found
  const grouping: Grouping = unit === 'hertz' || unit === 'per-second' ? 'decimal' : 'thousands'
  const read = readNumber(parts.figures, grouping)
  if (!read.ok) return fail({ ...read.problem, text } as QuantityProblem)
  const { exact, step, whole, denominator } = read.number
  const counted = denominator !== undefined || (whole && grouping === 'decimal')
  const vph = exact.mul(factor)
  return {
    ok: true,
    quantity: { value: vph.valueOf(), exact: vph, unit, halfStep: counted ? 0 : step.mul(factor).div(2).valueOf() },
  }
}
