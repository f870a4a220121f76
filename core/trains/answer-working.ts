import { asWritten } from '../proofs/exact-value.ts'
import type { WorkingStep } from '../proofs/proof.ts'
import { fractionsOf } from '../proofs/train-working.ts'
import type { CaliberValues } from '../record/caliber.ts'
import type { CountKey } from './cuttable-counts.ts'
import { relationGives, type TrainRelation } from './train-relations.ts'

/** The counts that stand behind a relation's pairs: the escape teeth are no part of a pair. */
const pairsOf = ({ above, below }: TrainRelation): readonly CountKey[] => above.slice(0, below.length)

/** The working of one relation with these counts, as on paper; null where a count is not known. */
export const relationWorking = (relation: TrainRelation, values: CaliberValues): WorkingStep | null => {
  const gives = relationGives(relation, values)
  if (gives === null) return null
  const counts = (keys: readonly CountKey[]) => keys.flatMap((key) => values[key] ?? [])
  const { statement, above, below, factor, fromSeconds } = relation
  const pairs = fractionsOf(counts(pairsOf(relation)), counts(below))
  const hours = statement === 'rate' ? factor.inverse().mul(2) : factor.inverse()
  const slow = values.hoursPerCentreTurn === undefined || fromSeconds ? '' : ` ÷ ${hours.toFraction(true)}`
  const beats = statement === 'rate' ? ` × 2 × ${values.escapeTeeth}` : ''
  const stated = [...above, ...below].flatMap((key) => (values[key] === undefined ? [] : [[key, values[key]]]))
  return {
    formula: `${fromSeconds ? '60 × ' : ''}${pairs}${beats}${statement === 'hour-hand' ? '' : slow}`,
    where: Object.fromEntries(stated),
    gives: asWritten(gives),
  }
}
