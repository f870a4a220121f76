import type { StripStep } from './caliber.ts'
import { foldedName } from './folded-name.ts'
import { foldedNamesOf, partKeys } from './part-keys.ts'

/** Letting down as the four languages print it, folded. */
const letDownWords =
  /let(ting)?(the)?(mainspring|spring|power|it)?(fully|allthewayoff)?down|unw[io]und?|desarm|detend|entspann|abspann|ablassen|ablaufen|ontspan|aflopen|aflaten/

/** True where a text speaks of letting the mainspring down. */
const speaksOfLettingDown = (text: string): boolean => letDownWords.test(foldedName(text))

const underPower = ['barrel', 'mainspring', 'ratchetWheel', 'click'] as const
/** Names long enough to be looked for within a step's name: `pal` stands in `pallets` too. */
const within = foldedNamesOf(underPower).filter((name) => name.length > 4)

const letsGo = ({ part }: StripStep): boolean => {
  if (speaksOfLettingDown(part)) return false
  if (partKeys(part).some((key) => underPower.some((each) => each === key))) return true
  const folded = foldedName(part)
  return within.some((name) => folded.includes(name))
}

/**
 * The first step, in this order, at which a mainspring under power would fly round: barrel, its bridge, ratchet or click
 * coming off before anything has said to let it down. Undefined where it is let down in time, or nothing holds it.
 * @example
 * notLetDownBefore([{ part: 'mainspring let down' }, { part: 'barrel bridge' }]) // undefined
 * @example
 * notLetDownBefore([{ part: 'balance cock' }, { part: 'barrel bridge' }])?.part // 'barrel bridge'
 */
export const notLetDownBefore = (order: readonly StripStep[]): StripStep | undefined => {
  for (const step of order) {
    if (speaksOfLettingDown(step.part) || (step.caution !== undefined && speaksOfLettingDown(step.caution)))
      return undefined
    if (letsGo(step)) return step
  }
  return undefined
}
