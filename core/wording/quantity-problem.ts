import type { QuantityProblem } from '../quantities/quantity.ts'
import type { ChoiceProblem } from '../record/read-choice.ts'
import type { MissingCellProblem } from '../record/read-list-line.ts'

type Problem = QuantityProblem | ChoiceProblem | MissingCellProblem

const oneOf = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`

/** The figure with as many digits as a person can use. */
const plain = (value: number): string => String(Number(value.toPrecision(6)))

/** More of a value than a person takes in at once is cut off, and what would break the line is a space. */
const quoted = (text: string): string => {
  const line = text.replace(/[\p{Cc}\p{Zl}\p{Zp}]+/gu, ' ')
  return `"${line.length > mostQuoted ? `${line.slice(0, mostQuoted)}…` : line}"`
}
const mostQuoted = 60

/** What is wrong and what to do, without the field's name. */
const explain = (problem: Problem): string => {
  switch (problem.code) {
    case 'empty':
      return 'nothing is written; write a value or take the line out.'
    case 'missing-cell':
      return 'is missing; fill it in or take the line out.'
    case 'unreadable':
      return `${quoted(problem.text)} cannot be read; write it as in the help beside the field.`
    case 'ambiguous':
      return `${quoted(problem.text)} can be read as ${oneOf(problem.readings)}; write ${oneOf(problem.readings.map((reading) => reading.replace(/ mm$/, '')))}.`
    case 'size-number':
      return `${quoted(problem.text)} is a size or gauge number, not a length; write the measured length.`
    case 'wrong-unit':
      return `${quoted(problem.text)} carries the unit ${quoted(problem.unit)}, which is not read here; write it in a unit named in the help.`
    case 'not-whole':
      return `${quoted(problem.text)} is not a whole number; count again and write a whole number.`
    case 'zero-denominator':
      return `${quoted(problem.text)} divides by nought; write the fraction again.`
    case 'limits-crossed':
      return `${quoted(problem.text)} puts the lower limit above the upper one; write the smaller first.`
    case 'fit-not-tabulated':
      return `${quoted(problem.text)} is not a fit that Lignebook has a table for (h, H, js or JS, grades 5 to 11, up to 30 mm); write both limits instead.`
    case 'impossible':
      return `${quoted(problem.text)} comes to ${plain(problem.value)}, outside what is possible (${plain(problem.possible[0])} to ${plain(problem.possible[1])}); check the figure and its unit.`
    case 'not-a-choice':
      return `${quoted(problem.text)} is not one of the choices; write ${oneOf(problem.choices)}.`
  }
}

/**
 * Says in one sentence why a value could not be read: what, where and what to do.
 * @example
 * wordProblem('Centre wheel', { code: 'not-whole', text: '80.5' }) // 'Centre wheel: "80.5" is not a whole number; count again and write a whole number.'
 */
export const wordProblem = (label: string, problem: Problem): string => `${label}: ${explain(problem)}`
