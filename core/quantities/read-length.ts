import Fraction from 'fraction.js'
import { toleranceWidthUm } from './iso-tolerance.ts'
import type { QuantityProblem, QuantityRead } from './quantity.ts'
import { readSingleLength, type SingleLength, type SingleLengthRead } from './single-length.ts'
import { longestPrint, tidyPrint } from './tidy-print.ts'

const fail = (problem: QuantityProblem): QuantityRead => ({ ok: false, problem })

const lengthOf = (length: SingleLength, limits: { low?: Fraction; high?: Fraction } = {}): QuantityRead => ({
  ok: true,
  quantity: {
    value: length.exact.valueOf(),
    exact: length.exact,
    unit: length.unit,
    halfStep: length.halfStep,
    ...(limits.low && { low: limits.low.valueOf() }),
    ...(limits.high && { high: limits.high.valueOf() }),
  },
})

/** The first problem of several figures, told about the whole text. */
const firstProblem = (text: string, ...reads: readonly SingleLengthRead[]): QuantityRead => {
  const failed = reads.find((read) => !read.ok)
  return fail(failed && !failed.ok ? ({ ...failed.problem, text } as QuantityProblem) : { code: 'unreadable', text })
}

/** `2 h6`, `2 H7`, `2 js7`. Half of an odd grade is kept as it falls (7.5 µm); tables round it (common practice). */
const readFit = (text: string, size: string, letter: string, grade: number): QuantityRead => {
  const nominal = readSingleLength(size)
  if (!nominal.ok) return firstProblem(text, nominal)
  const { exact } = nominal.length
  const width = toleranceWidthUm(exact.valueOf(), grade)
  if (width === undefined || !/^(?:h|H|js|JS|Js)$/.test(letter)) return fail({ code: 'fit-not-tabulated', text })
  const mm = new Fraction(BigInt(width), 1000n)
  if (letter === 'h') return lengthOf(nominal.length, { low: exact.sub(mm), high: exact })
  if (letter === 'H') return lengthOf(nominal.length, { low: exact, high: exact.add(mm) })
  return lengthOf(nominal.length, { low: exact.sub(mm.div(2)), high: exact.add(mm.div(2)) })
}

const readRange = (text: string, from: string, to: string): QuantityRead => {
  const ownLow = readSingleLength(from)
  const ownHigh = readSingleLength(to)
  // A unit printed once, at either end, holds for both; figures alone are millimetres.
  const bare = (end: string) => /\d$/.test(end)
  const low = bare(from) && ownHigh.ok && !bare(to) ? readSingleLength(from, ownHigh.length.unit) : ownLow
  const high = bare(to) && ownLow.ok && !bare(from) ? readSingleLength(to, ownLow.length.unit) : ownHigh
  if (!low.ok || !high.ok) return firstProblem(text, low, high)
  if (low.length.exact.gt(high.length.exact)) return fail({ code: 'limits-crossed', text })
  const middle = low.length.exact.add(high.length.exact).div(2)
  return lengthOf({ ...low.length, exact: middle }, { low: low.length.exact, high: high.length.exact })
}

const readDeviations = (text: string, size: string, deviations: readonly (readonly [string, string])[]) => {
  // `1.2 ±0.01 mm`: the unit stands once, at the end, for all.
  const trailing = /[^\d.,/ ]+$/.exec(deviations.at(-1)?.[1] ?? '')?.[0] ?? ''
  const nominal = readSingleLength(/\d$/.test(size) && trailing ? `${size} ${trailing}` : size)
  if (!nominal.ok) return firstProblem(text, nominal)
  const { exact, unit } = nominal.length
  const reads = deviations.map(([, figure]) => readSingleLength(figure, unit))
  const signed: Fraction[] = []
  reads.forEach((read, index) => {
    if (read.ok) signed.push(deviations[index]?.[0] === '-' ? read.length.exact.neg() : read.length.exact)
  })
  const [first, second] = signed
  if (!first || !second) return firstProblem(text, ...reads)
  const [low, high] = first.lt(second) ? [first, second] : [second, first]
  return lengthOf(nominal.length, { low: exact.add(low), high: exact.add(high) })
}

const readTidy = (text: string): QuantityRead => {
  const oneSided = /^(max|maximum|min|minimum|mini|maxi|≤|≥|<=|>=)\.? ?(.+)$/i.exec(text)
  if (oneSided) {
    const [, word = '', figure = ''] = oneSided
    const read = readSingleLength(figure)
    if (!read.ok) return firstProblem(text, read)
    const { exact } = read.length
    return lengthOf(read.length, /^(?:max|≤|<)/i.test(word) ? { high: exact } : { low: exact })
  }
  const plusMinus = /^(.+?) ?(?:±|\+ ?\/ ?-|\+ ?-) ?(.+)$/.exec(text)
  if (plusMinus) {
    const [, size = '', figure = ''] = plusMinus
    return readDeviations(text, size, [
      ['+', figure],
      ['-', figure],
    ])
  }
  const signed = text.replace(/ (0 ?\/ ?[+-])/, ' +$1').replace(/([+-] ?[\d.,]+ ?\/ ?)(0[^.,\d]*)$/, '$1+$2')
  const deviations = /^(.+?) ?([+-]) ?([\d.,]+) ?\/? ?([+-]) ?(.+)$/.exec(signed)
  if (deviations) {
    const [, size = '', sign1 = '', figure1 = '', sign2 = '', figure2 = ''] = deviations
    return readDeviations(text, size, [
      [sign1, figure1],
      [sign2, figure2],
    ])
  }
  const fit = /^([\d.,]+(?: ?mm)?) ?([a-zA-Z]{1,2})(\d{1,2})$/.exec(text)
  if (fit) return readFit(text, fit[1] ?? '', fit[2] ?? '', Number(fit[3]))
  const range =
    /^\d+-\d+ ?\//.test(text) && !/-.*-/.test(text)
      ? null
      : (/^(.+?) ?(?:…|\.{2,3}| to | bis | à | tot ) ?(.+)$/i.exec(text) ?? /^([^-]+?) ?- ?([^-]+)$/.exec(text))
  if (range) return readRange(text, range[1] ?? '', range[2] ?? '')
  const read = readSingleLength(text)
  return read.ok ? lengthOf(read.length) : read
}

/**
 * Reads a length as handbooks print it, into millimetres: decimals with point or comma, lignes, douzièmes, inches,
 * hundredths, micrometres, and limits in any of their usual forms.
 * @source forms of print: common practice
 */
export const readLength = (text: string): QuantityRead => {
  if (text.length > longestPrint) return fail({ code: 'unreadable', text })
  const tidy = tidyPrint(text)
  if (tidy === '') return fail({ code: 'empty' })
  const read = readTidy(tidy)
  return read.ok || read.problem.code === 'empty' ? read : fail({ ...read.problem, text } as QuantityProblem)
}
