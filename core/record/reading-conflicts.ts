import { type CaliberFieldKey, caliberFields } from '../fields/caliber-fields.ts'
import type { FieldDef } from '../fields/field.ts'
import type { Caliber } from './caliber.ts'
import type { Reading } from './reading.ts'

/** Two readings of one field that cannot both be right, the chosen one first. */
export interface ReadingConflict {
  readonly key: CaliberFieldKey
  readonly first: Reading
  readonly second: Reading
  /** Second less first in the canonical unit; null for a choice. */
  readonly difference: number | null
  /** How far apart their printed rounding lets them lie; null for a choice. */
  readonly allowed: number | null
}

const noise = 1e-9

/** Between which limits the true value lies, by what is printed. */
const limitsOf = ({ value, quantity }: Reading): readonly [number, number] => {
  if (quantity === undefined) return [Number(value), Number(value)]
  const { low, high, halfStep } = quantity
  const oneSided = (low === undefined) !== (high === undefined)
  return [
    low ?? (oneSided ? Number.NEGATIVE_INFINITY : quantity.value - halfStep),
    high ?? (oneSided ? Number.POSITIVE_INFINITY : quantity.value + halfStep),
  ]
}

/**
 * True where two readings can stand for one value: the same word, or figures whose printed rounding or limits overlap.
 * Figures one apart in the last digit only touch: 0.18 and 0.17 are two answers.
 */
export const readingsMeet = (one: Reading, other: Reading): boolean => {
  if (one.value === other.value) return true
  if (typeof one.value !== 'number' || typeof other.value !== 'number') return false
  const [low, high] = limitsOf(one)
  const [otherLow, otherHigh] = limitsOf(other)
  const slack = noise * Math.max(1, Math.abs(one.value))
  return low < otherHigh - slack && otherLow < high - slack
}

const halfStep = ({ quantity }: Reading): number => quantity?.halfStep ?? 0

const conflictOf = (key: CaliberFieldKey, first: Reading, second: Reading): ReadingConflict => {
  if (typeof first.value !== 'number' || typeof second.value !== 'number')
    return { key, first, second, difference: null, allowed: null }
  return {
    key,
    first,
    second,
    difference: second.value - first.value,
    allowed: halfStep(first) + halfStep(second),
  }
}

/** True for fields whose readings can be held against each other; remarks and lists of names cannot. */
const isComparable = (key: CaliberFieldKey): boolean => {
  const { kind }: FieldDef = caliberFields[key]
  return kind !== 'text' && kind !== 'texts'
}

/** The fields with two readings or more that can be held against each other. */
export const fieldsReadTwice = (readings: Caliber['readings']): readonly CaliberFieldKey[] =>
  (Object.keys(readings) as CaliberFieldKey[]).filter((key) => (readings[key]?.length ?? 0) > 1 && isComparable(key))

/** Every pair of readings of one field that do not meet. */
export const readingConflicts = (readings: Caliber['readings']): readonly ReadingConflict[] =>
  fieldsReadTwice(readings).flatMap((key) => {
    const sorted: readonly Reading[] = [...(readings[key] ?? [])].sort((a, b) => Number(b.chosen) - Number(a.chosen))
    return sorted.flatMap((first, index) =>
      sorted
        .slice(index + 1)
        .filter((second) => !readingsMeet(first, second))
        .map((second) => conflictOf(key, first, second)),
    )
  })
