import { listFields } from '../fields/list-fields.ts'
import type { JewelObjectionCode } from '../jewels/jewel-objections.ts'
import type { WorkingStep } from '../proofs/proof.ts'
import type { Judged } from './findings/judged.ts'

const { place: placeColumn, kind: kindColumn } = listFields.jewels.columns
const places: Readonly<Record<string, string>> = placeColumn.choices
const kinds: Readonly<Record<string, string>> = {
  ...kindColumn.choices,
  hole: 'hole jewel',
  cap: 'cap jewel',
  impulse: 'impulse jewel',
  any: 'jewel',
}

interface Seat {
  readonly place: string
  /** `2 hole jewels`. */
  readonly stones: string
  readonly are: string
  readonly count: number
  readonly expected: number
}

const stonesOf = (count: number, kind: string): string => `${count} ${kinds[kind] ?? kind}${count === 1 ? '' : 's'}`

const sentences: Readonly<Record<JewelObjectionCode, (seat: Seat) => string>> = {
  'more-than-pivots': ({ place, stones, are, expected }) =>
    `${stones} ${are} listed for the ${place}, which has ${expected} pivots.`,
  'cap-without-hole': ({ place, stones, are, expected }) =>
    `${stones} ${are} listed for the ${place} over ${expected === 0 ? 'no hole jewel' : stonesOf(expected, 'hole')}: a cap jewel stands over a hole jewel.`,
  'odd-pivot': ({ place }) => `1 hole jewel is listed for the ${place}, which has 2 pivots.`,
  'stones-without-lever': ({ stones, are }) =>
    `${stones} ${are} listed, which a lever escapement has and this one has not.`,
  'stones-of-two': ({ stones, are }) => `${stones} ${are} listed, where a lever has 2.`,
  'pivots-without-pallets': ({ stones, are }) =>
    `${stones} ${are} listed for the pallet, and this escapement has no pallet arbor.`,
  'impulse-without-pin': ({ stones, are }) => `${stones} ${are} listed, and this escapement has no impulse pin.`,
  'impulse-in-pin-lever': ({ stones, are }) =>
    `${stones} ${are} listed, where a pin lever usually has an impulse pin of steel.`,
  'impulse-of-one': ({ stones, are }) => `${stones} ${are} listed, where a lever watch has 1.`,
  'no-sweep-arbor': ({ stones, are }) =>
    `${stones} ${are} listed for the sweep, and the seconds display stated has no sweep pinion.`,
  'no-fifth-arbor': ({ stones, are }) =>
    `${stones} ${are} listed for the fifth arbor, and the train stated has none between fourth wheel and escape pinion.`,
  'unusual-for-total': ({ place, stones, are, count, expected }) =>
    `For as many jewels ${expected} would be customary at the ${place}; ${count === 0 ? `no ${stones.slice(2)} are` : `${stones} ${are}`} listed.`,
}

const isCode = (code: unknown): code is JewelObjectionCode => typeof code === 'string' && Object.hasOwn(sentences, code)

const objectionSentence = ({ where }: WorkingStep): readonly string[] => {
  const { objection, place, kind } = where
  if (!isCode(objection)) return []
  const count = Number(where.count)
  const seat = {
    place: places[String(place)] ?? String(place),
    stones: stonesOf(count, String(kind)),
    are: count === 1 ? 'is' : 'are',
    count,
    expected: Number(where.expected),
  }
  return [sentences[objection](seat)]
}

/** Each objection to where the jewels sit, and what to do. */
export const jewelsSentence = (judgement: Judged, advice: string): string =>
  [...judgement.working.flatMap(objectionSentence), advice].join(' ')
