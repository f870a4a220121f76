import type { CaliberEntry } from '../../core/exchange/library-file.ts'
import { type CaliberFieldKey, caliberFields } from '../../core/fields/caliber-fields.ts'
import { listFields } from '../../core/fields/list-fields.ts'
import { proveCaliber } from '../../core/proofs/prove.ts'
import { type Severity, weigh } from '../../core/proofs/severity.ts'
import type { Caliber } from '../../core/record/caliber.ts'
import { inheritFrom } from '../../core/record/inherit.ts'
import { type EntryProblem, isListKey, readEntry } from '../../core/record/read-entry.ts'
import { wordProblem } from '../../core/wording/quantity-problem.ts'

export interface ProvedEntry {
  readonly values: Caliber
  readonly problems: readonly EntryProblem[]
  /** How many findings count as wrong and how many as doubtful, after the caliber's own overrules. */
  readonly disagree: number
  readonly doubtful: number
}

/** Reads an entry and counts what its proofs say of it over its bases, the nearest first. */
export const proveEntry = (entry: CaliberEntry, bases: readonly CaliberEntry[] = []): ProvedEntry => {
  const { caliber, problems } = readEntry(entry)
  const whole = inheritFrom(
    caliber,
    bases.map((base) => readEntry(base).caliber),
  )
  const severities = proveCaliber(whole).map(
    ({ proof, judgement }) => weigh(proof.id, judgement.outcome, whole.overrules).severity,
  )
  const count = (severity: Severity) => severities.filter((one) => one === severity).length
  return { values: caliber, problems, disagree: count('wrong'), doubtful: count('doubtful') }
}

/** Says a problem of an entry in a sentence. */
export const sayProblem = ({ field, index, column, problem }: EntryProblem): string => {
  if (!isListKey(field)) return wordProblem(caliberFields[field as CaliberFieldKey].label, problem)
  const { label, columns } = listFields[field]
  const cell = column === undefined ? undefined : (columns as Record<string, { label: string }>)[column]?.label
  return wordProblem(`${label}, line ${index + 1}${cell ? `, ${cell.toLowerCase()}` : ''}`, problem)
}

/** Where a problem stands in a caliber of a file: `fields.thirdWheel` or `jewels[2].count`. */
export const placeInCaliber = ({ field, index, column }: EntryProblem): string => {
  if (isListKey(field)) return `${field}[${index}]${column === undefined ? '' : `.${column}`}`
  return field === 'maker' || field === 'designation' ? field : `fields.${field}`
}
