import type { CaliberFieldKey } from '../fields/caliber-fields.ts'

interface CuttableRow {
  /** The fewest and the most teeth or leaves. */
  readonly range: readonly [low: number, high: number]
  /** Where the ends come from, with the grade of what is printed: A read in the text, B at second hand. */
  readonly source: string
}

const derham = 'W. Derham, The Artificial Clock-maker, 1696'
const eb1810 = 'Encyclopaedia Britannica, 4th ed., 1810'
const goodrich = 'W. L. Goodrich, The Modern Clock, 1905'

/** Below five leaves a pinion no longer carries; great clocks are cut up to 16, and the rest is room to spare. */
const pinion: CuttableRow = {
  range: [5, 24],
  source: `common practice; 5 leaves in ${derham}, pp. 19–25 (A), 16 in ${goodrich}, p. 257 (A)`,
}

/** From the smallest wheels of old watches to the great wheels of clocks, with room to spare above. */
const wheel: CuttableRow = {
  range: [20, 200],
  source: `common practice; 30 teeth in ${derham}, p. 116 (A), 160 in ${eb1810}, “Clock”, Franklin’s (A)`,
}

const rows = {
  barrelTeeth: wheel,
  intermediatePinion: pinion,
  intermediateWheel: wheel,
  centrePinion: pinion,
  centreWheel: wheel,
  thirdPinion: pinion,
  thirdWheel: wheel,
  fourthPinion: pinion,
  fourthWheel: wheel,
  fifthPinion: pinion,
  fifthWheel: wheel,
  escapePinion: pinion,
  escapeTeeth: {
    range: [3, 120],
    source: `${goodrich}, pp. 257–258, three-legged gravity wheel (A); ${eb1810}, “Clock”, Ferguson’s, 90 teeth (A); C. Dietzschold, Die Turmuhren, p. 205, 84 pins (B)`,
  },
  sweepDriver: wheel,
  sweepPinion: pinion,
  cannonPinion: {
    range: [6, 60],
    source: `common practice; 10 in ${eb1810} (A), 48 in ${derham}, pp. 110–111 (A)`,
  },
  minuteWheel: {
    range: [12, 120],
    source: `common practice; 30 in ${eb1810}, “Clock” (A), 48 in ${derham}, pp. 110–111 (A)`,
  },
  minutePinion: { range: [5, 24], source: `common practice; 6 in ${derham}, pp. 110–111 (A)` },
  hourWheel: {
    range: [20, 200],
    source: `common practice; 36 in ${eb1810} (A), 84 in ${goodrich}, p. 295 (A)`,
  },
} as const satisfies Partial<Record<CaliberFieldKey, CuttableRow>>

/** The field of a count of teeth or leaves that the trade cuts. */
export type CountKey = keyof typeof rows

/** Every count of teeth and leaves, in the order of the power flow and then of the motion work. */
export const countKeys = Object.keys(rows) as readonly CountKey[]

/** Whether a field holds a count of teeth or leaves that is cut. */
export const isCountKey = (key: string): key is CountKey => Object.hasOwn(rows, key)

/**
 * The fewest and the most teeth or leaves that are cut for a field, in watches and clocks; null for a field that is no such count.
 *
 * Wide enough for every train in print that was read for this; narrow enough to list. A fourth wheel of 230 or a
 * pinion of four leaves is a slip, not a train.
 * @example
 * cuttable('escapePinion') // [5, 24]
 */
export const cuttable = (key: CaliberFieldKey): readonly [low: number, high: number] | null =>
  isCountKey(key) ? rows[key].range : null

/**
 * Where the ends of the range come from.
 * @example
 * cuttableSource('thirdPinion').includes('common practice') // true
 */
export const cuttableSource = (key: CountKey): string => rows[key].source
