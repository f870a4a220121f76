import type { CaliberFieldKey } from '../fields/caliber-fields.ts'
import { caliberFields } from '../fields/caliber-fields.ts'
import type { Caliber } from '../record/caliber.ts'
import { type CountKey, cuttable } from './cuttable-counts.ts'
import { boundBy, searchRule, type TrainRelation, trainRelations } from './train-relations.ts'
import { type SearchLimits, type SearchRange, type SearchResult, wholeNumberAnswers } from './whole-number-search.ts'

/** A count that nothing stated binds, with the fields that would bind it. */
export interface UnboundCount {
  readonly key: CountKey
  readonly waitsFor: readonly CaliberFieldKey[]
}

const limits: SearchLimits = { mostTried: 300_000, mostAnswers: 5000 }

/** One reading of a train with its unknown counts. */
export interface MissingQuestion {
  readonly caliber: Pick<Caliber, 'values' | 'readings' | 'lists'>
  readonly unknown: readonly CountKey[]
  readonly unbound: readonly UnboundCount[]
  readonly relations: readonly TrainRelation[]
  readonly fourthArbor: boolean
}

/** The counts that what is stated binds, with what binds them, and those that nothing does. */
const questionOf = (
  caliber: MissingQuestion['caliber'],
  wanted: readonly CountKey[],
  fourthArbor: boolean,
  regard: (relation: TrainRelation) => boolean,
): MissingQuestion => {
  const all = trainRelations(caliber, wanted, fourthArbor).filter(regard)
  const usable = all.filter(({ lacking }) => lacking.length === 0)
  const set = new Set(wanted)
  const bound = new Set(
    usable.filter(({ statement }) => statement !== 'steepness').flatMap((relation) => boundBy(relation, set)),
  )
  const unbound = wanted
    .filter((key) => !bound.has(key))
    .map((key) => {
      const waits = all
        .filter(({ statement, above, below }) => statement !== 'sizes' && [...above, ...below].includes(key))
        .map(({ lacking }) => lacking)
        .filter((lacking) => lacking.length > 0)
        .sort((one, other) => one.length - other.length)
      return { key, waitsFor: waits[0] ?? [] }
    })
  const unknown = wanted.filter((key) => bound.has(key))
  const known = new Set(unknown)
  const relations = usable.filter((relation) => {
    const keys = boundBy(relation, set)
    return keys.length > 0 && keys.every((key) => known.has(key))
  })
  return { caliber, unknown, unbound, relations, fourthArbor }
}

const rangesOf = (unknown: readonly CountKey[], range: (key: CountKey) => readonly [number, number]) =>
  unknown.map((key): SearchRange<CountKey> => ({ key, range: range(key) }))
const cuttableRange = (key: CountKey) => cuttable(key) ?? caliberFields[key].possible

/** The cuttable range of each count. */
export const cuttableRanges = (unknown: readonly CountKey[]): readonly SearchRange<CountKey>[] =>
  rangesOf(unknown, cuttableRange)

const usualRange = (key: CountKey) => caliberFields[key].usual

const search = ({ caliber, unknown, relations }: MissingQuestion): SearchResult<CountKey> => {
  if (unknown.length === 0) return { answers: [], complete: true }
  const set = new Set(unknown)
  const rules = relations.map((relation) => searchRule(relation, caliber.values, set))
  const whole = wholeNumberAnswers(rangesOf(unknown, cuttableRange), rules, limits)
  if (whole.complete) return whole
  // Too many to list: what is usual is listed, as far as it goes.
  return { answers: wholeNumberAnswers(rangesOf(unknown, usualRange), rules, limits).answers, complete: false }
}

/** A reading with what was found for it. */
export interface MissingTry {
  readonly question: MissingQuestion
  readonly found: SearchResult<CountKey>
}

const everything = () => true
const withoutSizes = ({ statement }: TrainRelation) => statement !== 'sizes'

/** One reading of the train, searched; sizes that leave nothing are set aside and remarked on instead. */
export const tryReading = (
  caliber: MissingQuestion['caliber'],
  wanted: readonly CountKey[],
  fourthArbor: boolean,
): MissingTry => {
  const question = questionOf(caliber, wanted, fourthArbor, everything)
  const found = search(question)
  const plain = questionOf(caliber, wanted, fourthArbor, withoutSizes)
  const sizesAlone = plain.unknown.length < question.unknown.length
  if (found.answers.length > 0 || sizesAlone || plain.relations.length === question.relations.length)
    return { question, found }
  return { question: plain, found: search(plain) }
}
