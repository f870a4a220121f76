import { type CaliberFieldKey, caliberFields } from '../../core/fields/caliber-fields.ts'
import type { FieldDef } from '../../core/fields/field.ts'
import { OutsideRange } from '../../core/formulas/outside-range.ts'
import { type FigureRead, readDailyGain, readFigure } from '../../core/quantities/read-figure.ts'
import { readField } from '../../core/record/read-field.ts'
import { outsideRangeSentence } from '../../core/wording/outside-range.ts'
import { wordProblem } from '../../core/wording/quantity-problem.ts'
import { echoOf, isMeasured } from '../pages/entry/echo-of.ts'

/** A figure as typed and as read; nothing is wrong with an empty one. */
export interface TypedFigure {
  readonly text: string
  readonly value: number | undefined
  /** What it was read as, where that says more than the text. */
  readonly echo: string
  /** One sentence on what cannot be read. */
  readonly problem: string
}

const blank = (text: string): TypedFigure => ({ text, value: undefined, echo: '', problem: '' })

/** A figure of a field of a caliber, read as the form reads it. */
export const typedField = (key: CaliberFieldKey, text: string): TypedFigure => {
  if (text.trim() === '') return blank(text)
  const def: FieldDef = caliberFields[key]
  const read = readField(key, text)
  if (!read.ok) return { ...blank(text), problem: wordProblem(def.label, read.problem) }
  const echo = read.quantity && isMeasured(def) ? echoOf(def.kind, text, read.quantity) : ''
  return { ...blank(text), value: Number(read.value), echo }
}

const typed = (label: string, text: string, read: FigureRead): TypedFigure =>
  read.ok ? { ...blank(text), value: read.value } : { ...blank(text), problem: wordProblem(label, read.problem) }

/** A figure of the bench, in the units named. */
export const typedFigure = (label: string, text: string, units: readonly string[] = []): TypedFigure =>
  text.trim() === '' ? blank(text) : typed(label, text, readFigure(text, units))

/** What the hands gain in a day; minutes are told in seconds. */
export const typedGain = (label: string, text: string): TypedFigure => {
  if (text.trim() === '') return blank(text)
  const figure = typed(label, text, readDailyGain(text))
  const echo = figure.value !== undefined && /['m′]/i.test(text) ? `${figure.value} s a day` : ''
  return { ...figure, echo }
}

/** What a formula answers, or the sentence on why it does not. */
export const answerOf = <T>(formula: () => T): { readonly found: T } | { readonly refused: string } => {
  try {
    return { found: formula() }
  } catch (error) {
    if (error instanceof OutsideRange) return { refused: outsideRangeSentence(error.code, error.details) }
    throw error
  }
}
