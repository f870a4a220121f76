import type { CaliberValues } from '../record/caliber.ts'
import { unusualSeats } from './customary-jewels.ts'
import type { JewelTally } from './jewel-tally.ts'

/** What may be said against the seat of a jewel. `core/wording` says it. */
export type JewelObjectionCode =
  | 'more-than-pivots'
  | 'cap-without-hole'
  | 'odd-pivot'
  | 'stones-without-lever'
  | 'stones-of-two'
  | 'pivots-without-pallets'
  | 'impulse-without-pin'
  | 'impulse-in-pin-lever'
  | 'impulse-of-one'
  | 'no-sweep-arbor'
  | 'no-fifth-arbor'
  | 'unusual-for-total'

export interface JewelObjection {
  readonly code: JewelObjectionCode
  readonly place: string
  readonly kind: string
  readonly count: number
  /** How many there would be. */
  readonly expected: number
  /** True where it cannot be so; false where it is only unusual. */
  readonly wrong: boolean
}

/** The fields beside the list that a seat is judged by. */
export const jewelFieldKeys = [
  'jewelsStated',
  'escapement',
  'secondsDisplay',
  'sweepPinion',
  'fourthWheel',
  'fifthPinion',
  'fifthWheel',
  'escapePinion',
] as const satisfies readonly (keyof CaliberValues)[]

type JewelFields = Pick<CaliberValues, (typeof jewelFieldKeys)[number]>

const arborPivots = 2
/** The arbor's two in the plates and two more in floor and lid. */
const pivots: Readonly<Record<string, number>> = {
  balance: arborPivots,
  pallet: arborPivots,
  escape: arborPivots,
  fifth: arborPivots,
  fourth: arborPivots,
  third: arborPivots,
  centre: arborPivots,
  sweep: arborPivots,
  barrel: 4,
}
/** Places where one hole jewel is customary: the other pivot runs in the plate or in a pipe. */
const mayBeSingle: ReadonlySet<string> = new Set(['centre', 'sweep', 'barrel'])
/** Every place with its seats, whose names are made once. */
const places = Object.entries(pivots).map(
  ([place, most]) =>
    ({
      place,
      most,
      holeSeat: `${place} hole`,
      capSeat: `${place} cap`,
      mayBeSingle: mayBeSingle.has(place),
    }) as const,
)

const inPivots = ({ seats }: JewelTally, objections: JewelObjection[]): void => {
  const single: string[] = []
  let pairs = 0
  for (const { place, most, holeSeat, capSeat, mayBeSingle } of places) {
    const hole = seats[holeSeat] ?? 0
    const cap = seats[capSeat] ?? 0
    if (hole > most)
      objections.push({ code: 'more-than-pivots', place, kind: 'hole', count: hole, expected: most, wrong: true })
    if (cap > most)
      objections.push({ code: 'more-than-pivots', place, kind: 'cap', count: cap, expected: most, wrong: true })
    else if (cap > hole)
      objections.push({ code: 'cap-without-hole', place, kind: 'cap', count: cap, expected: hole, wrong: false })
    if (mayBeSingle) continue
    if (hole === 1) single.push(place)
    else if (hole > 1 && place !== 'balance') pairs += 1
  }
  // A train with one jewel at each of several arbors is jewelled in the upper plate only.
  const upperPlateOnly = pairs === 0 && single.length > 1 && !single.includes('balance')
  if (upperPlateOnly) return
  for (const place of single)
    objections.push({ code: 'odd-pivot', place, kind: 'hole', count: 1, expected: arborPivots, wrong: false })
}

const noPallets: ReadonlySet<string> = new Set(['cylinder', 'verge', 'duplex'])
const noPin: ReadonlySet<string> = new Set(['cylinder', 'verge'])
const noStones: ReadonlySet<string> = new Set(['cylinder', 'pin-lever'])

const inEscapement = ({ seats }: JewelTally, { escapement }: JewelFields, objections: JewelObjection[]): void => {
  const stones = seats['pallet pallet-stone'] ?? 0
  const pallet = { place: 'pallet', kind: 'pallet-stone', count: stones }
  if (stones > 0 && escapement !== undefined && escapement !== 'other') {
    if (escapement !== 'lever')
      objections.push({ ...pallet, code: 'stones-without-lever', expected: 0, wrong: noStones.has(escapement) })
    else if (stones !== 2) objections.push({ ...pallet, code: 'stones-of-two', expected: 2, wrong: stones > 2 })
  }
  const palletHoles = seats['pallet hole'] ?? 0
  if (palletHoles > 0 && escapement !== undefined && noPallets.has(escapement))
    objections.push({
      code: 'pivots-without-pallets',
      place: 'pallet',
      kind: 'hole',
      count: palletHoles,
      expected: 0,
      wrong: true,
    })
  const impulse = seats['balance impulse'] ?? 0
  if (impulse === 0) return
  const pin = { place: 'balance', kind: 'impulse', count: impulse }
  if (escapement !== undefined && noPin.has(escapement))
    objections.push({ ...pin, code: 'impulse-without-pin', expected: 0, wrong: true })
  else if (escapement === 'pin-lever')
    objections.push({ ...pin, code: 'impulse-in-pin-lever', expected: 0, wrong: false })
  else if (impulse > 1 && escapement === 'lever')
    objections.push({ ...pin, code: 'impulse-of-one', expected: 1, wrong: false })
}

const inArbors = ({ places }: JewelTally, fields: JewelFields, objections: JewelObjection[]): void => {
  const { secondsDisplay, sweepPinion, fifthPinion, fifthWheel, fourthWheel, escapePinion } = fields
  const sweep = places.sweep ?? 0
  if (sweep > 0 && secondsDisplay !== undefined && secondsDisplay !== 'centre-indirect' && sweepPinion === undefined)
    objections.push({
      code: 'no-sweep-arbor',
      place: 'sweep',
      kind: 'any',
      count: sweep,
      expected: 0,
      wrong: secondsDisplay !== 'centre-direct',
    })
  const fifth = places.fifth ?? 0
  const fourthDrivesEscape = fourthWheel !== undefined && escapePinion !== undefined
  if (fifth > 0 && fourthDrivesEscape && fifthPinion === undefined && fifthWheel === undefined)
    objections.push({ code: 'no-fifth-arbor', place: 'fifth', kind: 'any', count: fifth, expected: 0, wrong: false })
}

/** Where the whole list is there, and of a lever watch: the customary ways to a total are known of those. */
const totalCanBeJudged = ({ total, seats }: JewelTally, { jewelsStated, escapement }: JewelFields): boolean =>
  total === (jewelsStated ?? total) &&
  (escapement === 'lever' || (escapement === undefined && seats['pallet pallet-stone'] !== undefined))

const inTotal = (tally: JewelTally, objections: JewelObjection[]): void => {
  for (const { seat, count, customary } of unusualSeats(tally) ?? []) {
    const [place = '', kind = ''] = seat.split(' ')
    objections.push({ code: 'unusual-for-total', place, kind, count, expected: customary, wrong: false })
  }
}

/** All that may be said against where the jewels of a list sit. What is customary for the total is said only where nothing else is. */
export const jewelObjections = (tally: JewelTally, fields: JewelFields): readonly JewelObjection[] => {
  const objections: JewelObjection[] = []
  inPivots(tally, objections)
  inEscapement(tally, fields, objections)
  inArbors(tally, fields, objections)
  if (objections.length === 0 && totalCanBeJudged(tally, fields)) inTotal(tally, objections)
  return objections
}
