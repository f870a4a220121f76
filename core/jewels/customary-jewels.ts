import type { JewelSeat, JewelSeats, JewelTally } from './jewel-tally.ts'

/**
 * The order in which a lever movement is jewelled: what is added next, with how many.
 * @source 2, 4, 5, 7, 9, 11, 13, 15 and 17 after Wikibooks and an encyclopaedia's "Jewel bearing" (read in excerpt); 16,
 * 19 and 21 are trade custom from memory
 */
const order: readonly (readonly [JewelSeat, number])[] = [
  ['balance hole', 2],
  ['balance cap', 2],
  ['balance impulse', 1],
  ['pallet pallet-stone', 2],
  ['pallet hole', 2],
  ['escape hole', 2],
  ['fourth hole', 2],
  ['third hole', 2],
  ['centre hole', 1],
  ['centre hole', 1],
  ['escape cap', 2],
  ['pallet cap', 2],
]
const seats = [...new Set(order.map(([seat]) => seat))]

/** Eleven with the train jewelled in the upper plate only: trade custom from memory. */
const upperPlateOnly: JewelSeats = {
  'balance hole': 2,
  'balance cap': 2,
  'balance impulse': 1,
  'pallet pallet-stone': 2,
  'pallet hole': 1,
  'escape hole': 1,
  'fourth hole': 1,
  'third hole': 1,
}

/** Below seven too many escapements and grades have their own way. */
const leastTotal = 7

/** The customary ways to each total. */
const waysTo: ReadonlyMap<number, readonly JewelSeats[]> = (() => {
  const ways = new Map<number, JewelSeats[]>()
  const sofar: Partial<Record<JewelSeat, number>> = {}
  let total = 0
  for (const [seat, count] of order) {
    sofar[seat] = (sofar[seat] ?? 0) + count
    total += count
    if (total >= leastTotal) ways.set(total, [{ ...sofar }])
  }
  ways.get(11)?.push(upperPlateOnly)
  return ways
})()

/** A seat whose number of jewels is not the customary one. */
export interface UnusualSeat {
  readonly seat: JewelSeat
  readonly count: number
  readonly customary: number
}

const unusualBeside = (way: JewelSeats, listed: JewelSeats): readonly UnusualSeat[] => {
  const unusual: UnusualSeat[] = []
  for (const seat of seats) {
    const count = listed[seat] ?? 0
    const customary = way[seat] ?? 0
    if (count !== customary) unusual.push({ seat, count, customary })
  }
  return unusual
}

/**
 * Where a list of jewels differs from the customary way to as many, the nearest where there are two; null where no way to
 * that total is known.
 * @example
 * unusualSeats({ seats: { 'balance hole': 2 }, inPlainWork: 2 }) // null
 */
export const unusualSeats = (tally: Pick<JewelTally, 'seats' | 'inPlainWork'>): readonly UnusualSeat[] | null => {
  let nearest: readonly UnusualSeat[] | null = null
  for (const way of waysTo.get(tally.inPlainWork) ?? []) {
    const unusual = unusualBeside(way, tally.seats)
    if (nearest === null || unusual.length < nearest.length) nearest = unusual
  }
  return nearest
}
