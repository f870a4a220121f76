import { listFields } from '../fields/list-fields.ts'
import type { JewelGroup } from '../record/caliber.ts'

/** Where a stone sits and of what kind it is, as the list of jewels names them: `escape hole`. */
export type JewelSeat = `${string} ${string}`

/** How many jewels sit where. */
export type JewelSeats = Readonly<Partial<Record<JewelSeat, number>>>

/** The jewels of a list by seat. */
export interface JewelTally {
  /** Pallet stones and impulse jewels have one seat each, under whatever place they are listed. */
  readonly seats: JewelSeats
  /** Jewels by place, in the order listed. */
  readonly places: Readonly<Record<string, number>>
  readonly total: number
  /** The total without the stones of work that not every movement has, which come on top of the customary ones. */
  readonly inPlainWork: number
}

const ownPlace: Readonly<Partial<Record<string, string>>> = { 'pallet-stone': 'pallet', impulse: 'balance' }
const plainPlaces: ReadonlySet<string> = new Set(['balance', 'pallet', 'escape', 'fourth', 'third', 'centre'])

const seatOf = (place: string, kind: string): JewelSeat => `${ownPlace[kind] ?? place} ${kind}`

const { place: placeColumn, kind: kindColumn } = listFields.jewels.columns
/** The seats of the known places and kinds, made once: a name put together anew for each line costs more than its sum. */
const knownSeats: ReadonlyMap<string, ReadonlyMap<string, JewelSeat>> = new Map(
  Object.keys(placeColumn.choices).map((place) => [
    place,
    new Map(Object.keys(kindColumn.choices).map((kind) => [kind, seatOf(place, kind)])),
  ]),
)

/**
 * Adds a list of jewels up by place and kind.
 * @example
 * tallyJewels([{ place: 'pallet', kind: 'impulse', count: 1 }]).seats // { 'balance impulse': 1 }
 */
export const tallyJewels = (groups: readonly JewelGroup[]): JewelTally => {
  const seats: Partial<Record<JewelSeat, number>> = {}
  const places: Record<string, number> = {}
  let total = 0
  let inPlainWork = 0
  for (const { place, kind, count } of groups) {
    const seat = knownSeats.get(place)?.get(kind) ?? seatOf(place, kind)
    seats[seat] = (seats[seat] ?? 0) + count
    places[place] = (places[place] ?? 0) + count
    total += count
    if (kind !== 'other' && plainPlaces.has(ownPlace[kind] ?? place)) inPlainWork += count
  }
  return { seats, places, total, inPlainWork }
}
