/** A beat rate that the trade is known to have cut trains for. */
export interface KnownRate {
  readonly beatRateVph: number
  /** A rate of now, or one that only old watches and clocks have. */
  readonly of: 'now' | 'old'
  readonly source: string
  /** How its source is known: A read in the text, C from memory. */
  readonly grade: 'A' | 'C'
}

const derham = 'W. Derham, The Artificial Clock-maker, 1696'
const eb1810 = 'Encyclopaedia Britannica, 4th ed., 1810'
const memory = 'common practice, from memory'

const rows: readonly (readonly [rate: number, of: KnownRate['of'], source: string])[] = [
  [14400, 'now', `${eb1810}, “Clock”`],
  [16200, 'now', `${derham}, p. 122`],
  [18000, 'now', 'Watch and Clock Escapements, compiled from The Keystone, 1904, p. 74'],
  [19800, 'now', memory],
  [21600, 'now', memory],
  [25200, 'now', memory],
  [28800, 'now', memory],
  [36000, 'now', memory],
  [2736, 'old', `${derham}, p. 110`],
  [3600, 'old', `Encyclopaedia Britannica, 11th ed., “Clock”, p. 537`],
  [7200, 'old', `${eb1810}, “Clock”`],
  [9000, 'old', `${derham}, p. 30`],
  [9100, 'old', `${derham}, p. 115`],
  [15120, 'old', `${derham}, p. 123`],
  [15675, 'old', `${derham}, p. 122`],
  [15708, 'old', `${derham}, p. 26`],
  [15960, 'old', `${derham}, p. 121`],
  [16000, 'old', `${derham}, p. 121, nominal`],
  [17280, 'old', `${eb1810}, “Science, Amusements of”, ex. 1`],
  [17576, 'old', `${eb1810}, “Science, Amusements of”, ex. 3`],
  [20196, 'old', `${derham}, pp. 19–25`],
]

/** Every known rate: those of now first, each from slow to fast. */
export const knownRates: readonly KnownRate[] = rows.map(([beatRateVph, of, source]) => ({
  beatRateVph,
  of,
  source,
  grade: source === memory ? 'C' : 'A',
}))

const byRate: ReadonlyMap<number, KnownRate> = new Map(knownRates.map((known) => [known.beatRateVph, known]))
const ofNow = knownRates.filter(({ of }) => of === 'now').map(({ beatRateVph }) => beatRateVph)

/**
 * The known rate that this one is, to the vibration.
 * @example
 * knownRate(17280)?.of // 'old'
 */
export const knownRate = (beatRateVph: number): KnownRate | undefined => byRate.get(beatRateVph)

/**
 * The rate of now that lies nearest.
 * @example
 * nearestCustomary(17958) // 18000
 */
export const nearestCustomary = (beatRateVph: number): number =>
  ofNow.reduce(
    (nearest, rate) => (Math.abs(rate - beatRateVph) < Math.abs(nearest - beatRateVph) ? rate : nearest),
    18000,
  )
