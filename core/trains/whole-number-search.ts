import type Fraction from 'fraction.js'

/** A product of whole numbers over others that must lie between two bounds, both included. */
export interface ProductRule<K extends string> {
  readonly above: readonly K[]
  readonly below: readonly K[]
  readonly low: Fraction
  readonly high: Fraction
}

export interface SearchRange<K extends string> {
  readonly key: K
  readonly range: readonly [low: number, high: number]
}

export interface SearchLimits {
  /** Numbers tried before the search gives up. */
  readonly mostTried: number
  readonly mostAnswers: number
}

export interface SearchResult<K extends string> {
  readonly answers: readonly Readonly<Record<K, number>>[]
  /** True where every whole number in the ranges was either tried or shut out by a rule. */
  readonly complete: boolean
}

/** A rule with its keys as places in the list of unknowns, once in binary for narrowing and once exact for the verdict. */
interface PlacedRule {
  readonly above: readonly number[]
  readonly below: readonly number[]
  readonly low: number
  readonly high: number
  readonly exactLow: Fraction
  readonly exactHigh: Fraction
}

/** Widens each narrowed range by more than binary division can be off, so that no answer is lost to it. */
const slack = 1e-9

const placed = <K extends string>(
  { above, below, low, high }: ProductRule<K>,
  place: ReadonlyMap<K, number>,
): PlacedRule => {
  const places = (keys: readonly K[]) => keys.flatMap((key) => place.get(key) ?? [])
  return {
    above: places(above),
    below: places(below),
    low: low.valueOf() * (1 - slack),
    high: high.valueOf() * (1 + slack),
    exactLow: low,
    exactHigh: high,
  }
}

const holds = ({ above, below, exactLow, exactHigh }: PlacedRule, values: readonly number[]): boolean => {
  const product = (places: readonly number[]) => places.reduce((so, at) => so * BigInt(values[at] ?? 1), 1n)
  const [over, under] = [product(above), product(below)]
  return exactLow.n * under <= over * exactLow.d && over * exactHigh.d <= exactHigh.n * under
}

/**
 * All whole numbers, each within its range, for which every product rule holds.
 *
 * Each number chosen narrows the ranges of the others by division, the narrowest is taken next, and the last one of a
 * rule is left a single quotient: nothing is tried that a rule shuts out. Binary numbers only narrow, with slack; whole
 * numbers decide.
 * @example
 * wholeNumberAnswers([{ key: 'a', range: [1, 9] }, { key: 'b', range: [1, 9] }], [{ above: ['a', 'b'], below: [], low: new Fraction(35), high: new Fraction(35) }]).answers // [{ a: 5, b: 7 }, { a: 7, b: 5 }]
 */
export const wholeNumberAnswers = <K extends string>(
  unknowns: readonly SearchRange<K>[],
  rules: readonly ProductRule<K>[],
  { mostTried, mostAnswers }: SearchLimits = { mostTried: Infinity, mostAnswers: Infinity },
): SearchResult<K> => {
  const place = new Map(unknowns.map(({ key }, at) => [key, at]))
  const placedRules = rules.map((rule) => placed(rule, place))
  const values = unknowns.map(() => 0)
  const answers: Record<K, number>[] = []
  let tried = 0
  let complete = true

  /** Narrows every range by every rule until nothing changes much; false where one is left empty. */
  const narrow = (lows: number[], highs: number[]): boolean => {
    for (const { above, below, low, high } of placedRules) {
      let least = 1
      let most = 1
      for (const at of above) {
        least *= lows[at] ?? 1
        most *= highs[at] ?? 1
      }
      for (const at of below) {
        least /= highs[at] ?? 1
        most /= lows[at] ?? 1
      }
      if (most < low || least > high) return false
      for (const at of above) {
        const [from, to] = [lows[at] ?? 1, highs[at] ?? 1]
        if (from === to) continue
        const lowest = Math.ceil((low * to) / most - slack)
        const highest = Math.floor((high * from) / least + slack)
        if (lowest > from) lows[at] = lowest
        if (highest < to) highs[at] = highest
        if ((lows[at] ?? 1) > (highs[at] ?? 1)) return false
      }
      for (const at of below) {
        const [from, to] = [lows[at] ?? 1, highs[at] ?? 1]
        if (from === to) continue
        const lowest = Math.ceil((least * to) / high - slack)
        const highest = Math.floor((most * from) / low + slack)
        if (lowest > from) lows[at] = lowest
        if (highest < to) highs[at] = highest
        if ((lows[at] ?? 1) > (highs[at] ?? 1)) return false
      }
    }
    return true
  }

  const search = (lows: number[], highs: number[]): void => {
    if (!complete || !narrow(lows, highs)) return
    let next = -1
    let width = Infinity
    for (let at = 0; at < lows.length; at += 1) {
      const open = (highs[at] ?? 0) - (lows[at] ?? 0)
      if (open > 0 && open < width) [next, width] = [at, open]
    }
    if (next < 0) {
      for (let at = 0; at < lows.length; at += 1) values[at] = lows[at] ?? 0
      if (!placedRules.every((rule) => holds(rule, values))) return
      if (answers.length >= mostAnswers) complete = false
      else answers.push(Object.fromEntries(unknowns.map(({ key }, at) => [key, values[at] ?? 0])) as Record<K, number>)
      return
    }
    for (let value = lows[next] ?? 0, last = highs[next] ?? 0; value <= last && complete; value += 1) {
      tried += 1
      if (tried > mostTried) complete = false
      const [deeperLows, deeperHighs] = [[...lows], [...highs]]
      deeperLows[next] = value
      deeperHighs[next] = value
      search(deeperLows, deeperHighs)
    }
  }

  search(
    unknowns.map(({ range }) => range[0]),
    unknowns.map(({ range }) => range[1]),
  )
  const order = unknowns.map(({ key }) => key)
  answers.sort((one, other) => {
    const differs = order.find((key) => one[key] !== other[key])
    return differs === undefined ? 0 : one[differs] - other[differs]
  })
  return { answers, complete }
}
