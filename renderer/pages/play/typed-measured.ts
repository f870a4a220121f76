import type { Limits } from '../../../core/bench/against-limits.ts'
import { makerLimits } from '../../../core/bench/maker-limits.ts'
import { type Measured, measured } from '../../../core/quantities/measured.ts'
import type { Quantity } from '../../../core/quantities/quantity.ts'
import { readQuantity } from '../../../core/quantities/read-quantity.ts'
import { oneLimitSentence } from '../../../core/wording/play-sentence.ts'
import { wordProblem } from '../../../core/wording/quantity-problem.ts'
import type { TypedFigure } from '../../components/typed-figure.ts'
import { echoOf } from '../entry/echo-of.ts'

/** A figure as typed at the bench, with the limits between which it lies. */
export interface TypedMeasured extends TypedFigure {
  readonly measured: Measured | undefined
}

/** A maker's figure as typed, with the limits that it sets. */
export interface TypedLimits extends TypedFigure {
  readonly limits: Limits | undefined
}

interface Asked {
  readonly label: string
  readonly kind: 'length' | 'angle'
  readonly possible: readonly [number, number]
}

const blank = { value: undefined, echo: '', problem: '' }

const readAs = ({ label, kind, possible }: Asked, text: string): { quantity?: Quantity; figure: TypedFigure } => {
  if (text.trim() === '') return { figure: { ...blank, text } }
  const read = readQuantity(kind, text, possible)
  if (!read.ok) return { figure: { ...blank, text, problem: wordProblem(label, read.problem) } }
  const { quantity } = read
  return { quantity, figure: { ...blank, text, value: quantity.value, echo: echoOf(kind, text, quantity) } }
}

/** Reads a length or an angle that was measured, as handbooks print them; `off` is what the instrument may be off. */
export const typedMeasured = (asked: Asked, text: string, off: number | undefined): TypedMeasured => {
  const { quantity, figure } = readAs(asked, text)
  if (quantity === undefined) return { ...figure, measured: undefined }
  const found = measured(quantity, off)
  return found === null
    ? { ...figure, value: undefined, echo: '', problem: oneLimitSentence(asked.label, text), measured: undefined }
    : { ...figure, measured: found }
}

/** Reads a maker's figure: a range, one limit, or a single figure. */
export const typedLimits = (asked: Asked, text: string): TypedLimits => {
  const { quantity, figure } = readAs(asked, text)
  return { ...figure, limits: quantity && makerLimits(quantity) }
}
