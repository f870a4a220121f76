import { type CountKey, countKeys, cuttable } from '../trains/cuttable-counts.ts'
import { defineProof } from './define-proof.ts'

/** Every stated count of teeth and leaves is one that the trade cuts. */
export const countsAreCuttable = defineProof({
  id: 'counts-are-cuttable',
  title: 'Counts are cuttable',
  meaning:
    'Every count of teeth and leaves is whole and one that is cut in watches and clocks; another is a slip of the pen, whatever the train comes to.',
  needs: [],
  uses: countKeys,
  lists: [],
  appliesTo: (values) => countKeys.some((key) => values[key] !== undefined),
  tolerance: {
    allows:
      'nothing beyond the ranges: wheels 20 to 200 teeth, pinions 5 to 24 leaves, escape wheels 3 to 120; motion work by its part',
    why:
      'Each range takes in the least and the most that were found in print for watches and clocks, with room to spare, so ' +
      'that only what nobody cuts falls outside.',
  },
  source:
    'common practice; W. Derham, The Artificial Clock-maker, 1696, pp. 19–25 and 110–116; Encyclopaedia Britannica, 4th ed., ' +
    '1810, “Clock”; W. L. Goodrich, The Modern Clock, 1905, pp. 257–258 and 295',
  validity: 'The counts that are stated of going train, sweep seconds and motion work; at least one.',
  reasons: ['counts-cuttable', 'counts-few', 'counts-many', 'counts-not-whole'],
  missingBesides: (values) => (countKeys.some((key) => values[key] !== undefined) ? [] : countKeys),
  judge: (values) => {
    const stated: CountKey[] = []
    const faults: { key: CountKey; count: number; bound: number | null; difference: number }[] = []
    for (const key of countKeys) {
      const count = values[key]
      if (count === undefined) continue
      stated.push(key)
      const [least, most] = cuttable(key) ?? [0, 0]
      const bound = count < least ? least : count > most ? most : null
      if (bound === null && Number.isInteger(count)) continue
      faults.push({ key, count, bound, difference: bound === null ? 0 : bound - count })
    }
    const [first] = faults
    return {
      outcome: first === undefined ? 'agrees' : 'disagrees',
      stated: first?.count ?? null,
      found: first?.bound ?? null,
      unit: 'teeth or leaves',
      difference: first?.difference ?? 0,
      allowed: 0,
      working: faults.flatMap(({ key, count, bound, difference }) =>
        bound === null ? [] : [{ formula: `${bound} − ${count}`, where: { [key]: count }, gives: difference }],
      ),
      reason:
        first === undefined
          ? 'counts-cuttable'
          : first.bound === null
            ? 'counts-not-whole'
            : first.difference > 0
              ? 'counts-few'
              : 'counts-many',
      details: {
        count: stated.length,
        others: faults.length - 1,
        ...(first === undefined ? {} : { field: first.key }),
      },
      fields: first === undefined ? stated : faults.map(({ key }) => key),
    }
  },
})
