import type { CaliberFieldKey } from '../fields/caliber-fields.ts'
import { favouredReading } from '../proofs/favoured-reading.ts'
import type { WorkingStep } from '../proofs/proof.ts'
import type { Caliber } from '../record/caliber.ts'
import { labelOf } from '../record/label-of.ts'
import type { Reading } from '../record/reading.ts'
import { figure } from './figure.ts'
import type { Judged } from './findings/judged.ts'

const place = (source?: number | string, page?: number | string): string =>
  source === undefined ? ' (no source)' : ` (${source}${page === undefined ? '' : `, page ${page}`})`

const apart = ({ where, gives }: WorkingStep): string => {
  if (typeof gives !== 'number') return ''
  const unit = where.unit ? ` ${where.unit}` : ''
  const allowed = Number(where.allowed ?? 0)
  const rounding = allowed > 0 ? `; the printed rounding explains ${figure(allowed, 4)}${unit}` : ''
  return `, ${figure(Math.abs(gives), 4)}${unit} apart${rounding}`
}

const conflictSentence = (step: WorkingStep): string => {
  const { field, first, firstSource, firstPage, second, secondSource, secondPage } = step.where
  return (
    `${labelOf(String(field))}: ${first}${place(firstSource, firstPage)} against ` +
    `${second}${place(secondSource, secondPage)}${apart(step)}.`
  )
}

/** Each pair of readings that differ, with their sources and how far apart they lie, and what to do. */
export const sourcesSentence = (judgement: Judged): string =>
  [...judgement.working.map(conflictSentence), 'Look both up again, choose one and note why.'].join(' ')

const favour = (caliber: Caliber, key: CaliberFieldKey): string => {
  const favoured = favouredReading(caliber, key)
  if (favoured === null) return ''
  const several = (caliber.readings[key]?.length ?? 0) > 2
  const other = several ? 'any other' : 'the other'
  const { printed, source, chosen }: Reading = favoured
  return ` The proofs favour ${printed}${place(source)}${chosen ? ', the one chosen' : ''}: they find less wrong than with ${other}.`
}

/** Which of several readings the other proofs favour, where they decide; nothing where they do not. */
export const favouredSentences = (judgement: Judged, caliber: Caliber): string =>
  judgement.reason === 'readings-differ' ? (judgement.fields ?? []).map((key) => favour(caliber, key)).join('') : ''
