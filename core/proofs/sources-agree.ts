import { caliberFields } from '../fields/caliber-fields.ts'
import type { FieldKind } from '../fields/field.ts'
import { onPaper } from '../quantities/on-paper.ts'
import { plain } from '../quantities/plain.ts'
import type { Reading } from '../record/reading.ts'
import { fieldsReadTwice, type ReadingConflict, readingConflicts } from '../record/reading-conflicts.ts'
import { defineProof } from './define-proof.ts'
import { measuringShare } from './measuring-share.ts'
import type { WorkingStep } from './proof.ts'

const units: Partial<Readonly<Record<FieldKind, string>>> = {
  length: 'mm',
  rate: 'vph',
  angle: 'deg',
  duration: 'h',
  year: 'years',
}

const counted: readonly FieldKind[] = ['count', 'year']

/** How far two readings lie apart, as a share of the first; whole where they cannot be nearly alike. */
const shareOf = ({ key, first, difference, allowed }: ReadingConflict): number => {
  if (difference === null || first.value === 0) return 1
  const off = Math.abs(difference)
  // A year with circa before it is good up to its last year; a count has no rounding.
  if (counted.includes(caliberFields[key].kind)) return off <= Number(allowed) ? 0 : 1
  return plain(off / Number(first.value))
}

const printOf = (name: string, { printed, source, page }: Reading): Record<string, string> => ({
  [name]: printed,
  ...(source === undefined ? {} : { [`${name}Source`]: source }),
  ...(page === undefined ? {} : { [`${name}Page`]: page }),
})

const stepOf = (conflict: ReadingConflict): WorkingStep => {
  const { key, first, second, difference, allowed } = conflict
  const where = {
    field: key,
    ...printOf('first', first),
    ...printOf('second', second),
    ...(allowed === null ? {} : { allowed: plain(allowed), unit: units[caliberFields[key].kind] ?? '' }),
  }
  return difference === null
    ? { formula: `${first.printed} against ${second.printed}`, where, gives: 'different' }
    : { formula: `${onPaper(Number(second.value))} − ${onPaper(Number(first.value))}`, where, gives: plain(difference) }
}

/** Several readings of one field meet within the rounding with which they are printed. */
export const sourcesAgree = defineProof({
  id: 'sources-agree',
  title: 'Sources agree',
  meaning:
    'Several readings of one field meet within the rounding with which they are printed; where they do not, one of the sources is in error.',
  needs: [],
  uses: [],
  lists: [],
  appliesTo: (_values, readings) => fieldsReadTwice(readings).length > 0,
  tolerance: {
    allows:
      'half of the last digit printed on either side, or the limits printed; otherwise a difference of up to 1 % is doubtful',
    why:
      'A figure stands for every value that rounds to it. Otherwise a difference of up to 1 % is a matter of measuring and wear; ' +
      'more is another figure. A count, a year or a choice is either the same or not. The 1 % is our choice.',
  },
  source: 'common practice',
  validity: 'Fields with two readings or more. Remarks, names and gauge numbers are not held against each other.',
  reasons: ['readings-agree', 'readings-differ'],
  judge: (_values, { readings }) => {
    const conflicts = readingConflicts(readings)
    const worst = conflicts.reduce<ReadingConflict | undefined>(
      (most, conflict) => (most === undefined || shareOf(conflict) > shareOf(most) ? conflict : most),
      undefined,
    )
    if (worst === undefined) {
      const fields = fieldsReadTwice(readings)
      return {
        outcome: 'agrees',
        stated: null,
        found: null,
        unit: '',
        difference: null,
        allowed: null,
        working: [],
        reason: 'readings-agree',
        details: { fields: fields.length },
        fields,
      }
    }
    const { key, first, second, difference, allowed } = worst
    return {
      outcome: shareOf(worst) > measuringShare ? 'disagrees' : 'doubtful',
      stated: typeof first.value === 'number' ? first.value : null,
      found: typeof second.value === 'number' ? second.value : null,
      unit: units[caliberFields[key].kind] ?? '',
      difference: difference === null ? null : plain(difference),
      allowed: allowed === null ? null : plain(allowed),
      working: conflicts.map(stepOf),
      reason: 'readings-differ',
      fields: [...new Set(conflicts.map((conflict) => conflict.key))],
    }
  },
})
