import Fraction from 'fraction.js'
import { type LengthUnit, lengthUnitMm, lengthUnitOf } from './length-units.ts'
import { type PrintedNumber, readNumber, splitFigures } from './printed-number.ts'
import type { QuantityProblem } from './quantity.ts'

/** One length without limits, in millimetres. */
export interface SingleLength {
  readonly exact: Fraction
  readonly unit: LengthUnit
  /** Half of the smallest step printed, in millimetres. */
  readonly halfStep: number
}
export type SingleLengthRead =
  | { readonly ok: true; readonly length: SingleLength }
  | { readonly ok: false; readonly problem: QuantityProblem }

/** The coarsest step in which a size in lignes is printed: a quarter. */
const ligneStep = new Fraction(1n, 4n)

/**
 * A size in lignes is printed to the nearest quarter, or eighth where an eighth is printed (common practice),
 * so a whole number of lignes may lie an eighth of a ligne off. Decimals say their own step.
 */
const stepOf = (number: PrintedNumber, unit: LengthUnit): Fraction => {
  if (unit !== 'ligne' || !(number.whole || number.denominator !== undefined)) return number.step
  return number.step.gt(ligneStep) ? ligneStep : number.step
}

const decimalFractions: Readonly<Record<number, LengthUnit>> = {
  10: 'tenths-mm',
  100: 'hundredths-mm',
  1000: 'micrometre',
}

/** `6/0`, `16s`, `size 16`, `No. 12`: the number of a trade gauge or size, which is no length. */
const isSizeNumber = (text: string): boolean =>
  /^\d{1,2} ?\/ ?0(?:'''|"| ?s| ?size)?$/.test(text) ||
  /^(?:size|no\.?|nr\.?|n°|№) ?\d+(?: ?\/ ?0)?$/.test(text) ||
  /^\d+ ?(?:s|size)$/.test(text)

/**
 * Reads one length without limits. `other` is the unit printed at the other end of a range or with the nominal,
 * which holds for this figure too where it has none of its own.
 */
export const readSingleLength = (text: string, other?: LengthUnit): SingleLengthRead => {
  const fail = (problem: QuantityProblem): SingleLengthRead => ({ ok: false, problem })
  const lower = text.toLowerCase()
  if (isSizeNumber(lower)) return fail({ code: 'size-number', text })
  const parts = splitFigures(lower)
  if (!parts) return fail({ code: 'unreadable', text })
  const named = parts.rest === '' ? other : lengthUnitOf(parts.rest)
  if (parts.rest !== '' && !named)
    return fail(
      /^[\p{L}µ°"'. ]+$/u.test(parts.rest)
        ? { code: 'wrong-unit', text, unit: parts.rest }
        : { code: 'unreadable', text },
    )
  const read = readNumber(parts.figures, 'ask')
  if (!read.ok) {
    const { problem } = read
    if (problem.code !== 'ambiguous') return fail({ ...problem, text } as QuantityProblem)
    const mark = parts.rest === '' ? ' mm' : ` ${parts.rest}`
    return fail({ code: 'ambiguous', text, readings: problem.readings.map((figure) => figure + mark) })
  }
  const { number } = read
  const mixed = /[ -]/.test(parts.figures)
  const decimalUnit =
    number.denominator === undefined || mixed || (named !== undefined && named !== 'mm')
      ? undefined
      : decimalFractions[number.denominator]
  if (number.denominator !== undefined && !named && !decimalUnit)
    return fail({
      code: 'ambiguous',
      text,
      readings: [`${parts.figures}'''`, `${Number(number.exact.valueOf().toFixed(4))} mm`],
    })
  const unit = decimalUnit ?? named ?? 'mm'
  const factor = decimalUnit ? lengthUnitMm.mm : lengthUnitMm[unit]
  return {
    ok: true,
    length: { exact: number.exact.mul(factor), unit, halfStep: stepOf(number, unit).mul(factor).div(2).valueOf() },
  }
}
