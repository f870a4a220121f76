import type { StripStep } from './caliber.ts'
import { foldedName } from './folded-name.ts'
import { partKeys } from './part-keys.ts'

/** A part named before a step, without a step of its own. */
export interface LooseEnd {
  readonly part: string
  readonly after: string
}

export interface StripOrder {
  /** The steps in an order that takes each after all that it waits for, as near to the list as can be; empty where there is none. */
  readonly order: readonly StripStep[]
  /** Where there is none: the parts of which each must come off before the next, the first of them again at the end. */
  readonly loop: readonly string[]
  readonly looseEnds: readonly LooseEnd[]
  /** Parts that have two steps. */
  readonly twice: readonly string[]
}

const joiners = /\s+(?:and|et|und|en|with|avec|mit|met)\s+|\s*[,;/&+]\s*/iu

/** Finds the step of a part: by its name, else by what it is called in another language, else within a step of several parts. */
const stepFinder = (steps: readonly StripStep[]) => {
  const whole = new Map<string, number>()
  const known = new Map<string, number>()
  const within = new Map<string, number>()
  const twice: string[] = []
  const put = (map: Map<string, number>, name: string, at: number) => {
    if (!map.has(name)) map.set(name, at)
  }
  steps.forEach(({ part }, at) => {
    const keys = partKeys(part)
    const [only] = keys
    const again =
      whole.has(foldedName(part)) || (keys.length === 1 && only !== undefined && known.get(only) !== undefined)
    if (again) twice.push(part)
    put(whole, foldedName(part), at)
    for (const key of keys) put(known, key, at)
    if (joiners.test(part)) for (const piece of part.split(joiners)) put(within, foldedName(piece), at)
  })
  const find = (name: string): number | undefined => {
    const folded = foldedName(name)
    const key = partKeys(name).find((each) => known.has(each))
    return whole.get(folded) ?? (key === undefined ? undefined : known.get(key)) ?? within.get(folded)
  }
  return { find, twice }
}

/** Puts the steps of taking down into an order in which each comes after all that it names, or shows the loop. */
export const stripOrder = (steps: readonly StripStep[]): StripOrder => {
  const { find, twice } = stepFinder(steps)
  const looseEnds: LooseEnd[] = []
  const waitsFor = steps.map(({ part, after = [] }) =>
    after.flatMap((name) => {
      const at = find(name)
      if (at === undefined) looseEnds.push({ part, after: name })
      return at === undefined ? [] : [at]
    }),
  )
  const order: StripStep[] = []
  const placed = new Set<number>()
  for (let from = 0; from < steps.length; from += 1) {
    // The way from a step back to what it waits for; a step is placed when nothing before it is left.
    const way = placed.has(from) ? [] : [from]
    const onWay = new Set(way)
    for (let at = way.at(-1); at !== undefined; at = way.at(-1)) {
      const before = waitsFor[at]?.find((each) => !placed.has(each))
      if (before === undefined) {
        placed.add(at)
        onWay.delete(at)
        way.pop()
        const step = steps[at]
        if (step) order.push(step)
      } else if (onWay.has(before)) {
        const loop = [before, ...way.slice(way.indexOf(before)).toReversed()]
        return { order: [], loop: loop.map((each) => steps[each]?.part ?? ''), looseEnds, twice }
      } else {
        onWay.add(before)
        way.push(before)
      }
    }
  }
  return { order, loop: [], looseEnds, twice }
}
