import type { CaliberEntry } from '../../core/exchange/library-file.ts'

/** Numbers that look random and are the same for the same seed (mulberry32). */
export const seededNumbers = (seed: number): (() => number) => {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296
  }
}

const starts = ['ver', 'ol', 'tam', 'bre', 'qua', 'lo', 'sti', 'mar', 'ged', 'pol', 'ha', 'wir', 'dun', 'cal', 'fe']
const middles = ['ri', 'do', 'len', 'va', 'mi', 'sor', 'ta', 'gu', 'ne', 'lu']
const ends = ['n', 'tte', 'sk', 'ren', 'baz', 'lot', 'quin', 'der', 'vy', 'mot']

const sure = <T>(list: readonly T[], at: number): T => {
  const item = list[at % list.length]
  if (item === undefined) throw new Error('an empty list')
  return item
}

/** A word that means nothing, the same for the same number. */
export const madeUpWord = (at: number): string =>
  sure(starts, at) +
  sure(middles, Math.floor(at / starts.length)) +
  sure(ends, Math.floor(at / (starts.length * middles.length))) +
  (at >= 1500 ? sure(middles, Math.floor(at / 1500)) : '')

const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1)

/** Going trains whose counts give their beat rate. */
const trains = [
  { rate: '18 000', counts: [80, 10, 80, 10, 75, 8, 80, 8, 15] },
  { rate: '18000', counts: [78, 12, 64, 8, 60, 8, 70, 7, 15] },
  { rate: "21'600", counts: [72, 12, 80, 10, 75, 10, 84, 7, 15] },
  { rate: '5/s', counts: [96, 12, 64, 8, 60, 8, 60, 6, 15] },
] as const
const trainKeys = [
  'barrelTeeth',
  'centrePinion',
  'centreWheel',
  'thirdPinion',
  'thirdWheel',
  'fourthPinion',
  'fourthWheel',
  'escapePinion',
  'escapeTeeth',
] as const

/** As many calibers as asked, from invented makers, no two of one name, the same for the same seed. */
export function* madeUpCalibers(count: number, seed = 1): Generator<CaliberEntry> {
  const next = seededNumbers(seed)
  const among = (most: number) => Math.floor(next() * most)
  const makers = Math.max(3, Math.min(1200, Math.ceil(count / 80)))
  for (let at = 0; at < count; at += 1) {
    const lignes = 5 + among(60) / 4
    const train = sure(trains, among(trains.length))
    const thickness = (8 + among(18)) / 100
    const printed: Record<string, string> = {
      diameterMm: next() < 0.5 ? `${lignes}'''` : `${(lignes * 2.256).toFixed(2)} mm`,
      heightMm: (2 + among(40) / 10).toFixed(2),
      beatRateVph: train.rate,
      secondsDisplay: 'small',
      escapement: 'lever',
      liftAngleDeg: String(48 + among(8)),
      goingHours: `${32 + among(16)} h`,
      barrelInsideMm: (9 + among(60) / 10).toFixed(1),
      barrelArborMm: (2.6 + among(10) / 10).toFixed(1),
      springHeightMm: (1 + among(12) / 10).toFixed(2),
      springThicknessMm: thickness.toFixed(2),
      springLengthMm: String(260 + among(300)),
      firstYear: String(1900 + among(80)),
      jewelsStated: String(sure([7, 15, 16, 17, 18], among(5))),
      ...Object.fromEntries(trainKeys.map((key, index) => [key, String(sure(train.counts, index))])),
    }
    if (next() < 0.2) printed.alsoKnownAs = `${capital(madeUpWord(among(900)))} ${among(900)}`
    if (next() < 0.6) printed.notes = Array.from({ length: 4 }, () => madeUpWord(among(9000))).join(' ')
    yield {
      maker: capital(madeUpWord(at % makers)),
      designation: `${5 + among(20)}-${Math.floor(at / makers)}${sure(['', 'B', 'S', ' bis'], among(4))}`,
      fields: Object.fromEntries(Object.entries(printed).map(([key, text]) => [key, [{ printed: text }]])),
      jewels: [{ place: 'balance', kind: 'hole', count: 2 }],
      lubrication: [],
      depths: [],
      parts: [{ part: 'mainspring', number: String(1000 + among(9000)) }],
      stripOrder: [],
    }
  }
}
