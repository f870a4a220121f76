import type { Limits, LimitVerdict } from '../bench/against-limits.ts'
import { type FreedomFinding, type LeverFreedom, type LockLeft, leverFreedoms } from '../bench/lever-freedoms.ts'
import { figure } from './figure.ts'
import { limitsText, measuredText } from './measured-text.ts'
import { playVerdictWords } from './play-sentence.ts'

/**
 * What the book allows for a freedom and where it stands; a figure printed alone is shown as printed.
 * @example
 * freedomStandardLine('run', { low: 0.25, high: 0.5 }) // '0.25 to 0.5°: Playtner 1910, p. 15'
 */
export const freedomStandardLine = (freedom: LeverFreedom, limits: Limits): string => {
  const alone = freedom === 'lock' || freedom === 'drop'
  const allowed = alone ? `${figure((limits.low + limits.high) / 2)}°` : limitsText(limits, '°')
  return `${allowed}: Playtner 1910, p. ${leverFreedoms[freedom].page}`
}

const less: Readonly<Record<LeverFreedom, string>> = {
  lock: 'Less than is allowed. In a large escapement it can be less; every tooth must still lock safely on each stone.',
  run: 'Less than is allowed: see that every tooth escapes before the fork is at its banking.',
  drop: 'Less than is allowed. A large wheel needs less; no tooth may touch the back of a stone.',
  edge: 'Less than is allowed: the pin may touch the fork as it goes in.',
  slot: 'Less than is allowed: see that the pin is free in the slot, oil and all.',
}
const more: Readonly<Record<LeverFreedom, string>> = {
  lock: 'More than is allowed: unlocking costs the balance motion.',
  run: 'More than is allowed: it lengthens the hold of the fork on the balance and makes a poor motion.',
  drop: 'More than is allowed: drop is power lost, and wants a deeper lock.',
  edge: 'More than is allowed: set beside the lock, it decides whether a jar can unlock the escapement.',
  slot: 'More than is allowed: motion lost at every impulse.',
}
const told: Readonly<Record<LimitVerdict, (freedom: LeverFreedom) => string>> = {
  within: () => 'As the book allows.',
  below: (freedom) => less[freedom],
  above: (freedom) => more[freedom],
  'cannot-tell': () => 'What it may be off reaches past the edge: measure it finer.',
}

/**
 * What a freedom of the lever escapement comes to, in plain words.
 * @example
 * freedomSentence({ freedom: 'run', measured: { value: 0.3, low: 0.3, high: 0.3 }, limits: { low: 0.25, high: 0.5 }, verdict: 'within' }) // 'As the book allows.'
 */
export const freedomSentence = ({ freedom, verdict }: FreedomFinding): string => told[verdict](freedom)

/**
 * Whether a jar can unlock the escapement as the pin enters the fork.
 * @example
 * lockLeftSentence({ leftDeg: { value: 0.75, low: 0.75, high: 0.75 }, verdict: 'holds' }) // 'If a jar throws the fork against the pin, 0.75° of lock is left, and the draw takes the fork back (Playtner 1910, p. 30).'
 */
export const lockLeftSentence = ({ leftDeg, verdict }: LockLeft): string => {
  if (verdict === 'holds')
    return `If a jar throws the fork against the pin, ${measuredText(leftDeg, '°')} of lock is left, and the draw takes the fork back (Playtner 1910, p. 30).`
  if (verdict === 'fails')
    return 'If a jar throws the fork against the pin, no lock is left: the freedom at the acting edge must be less than lock and run together (Playtner 1910, p. 30).'
  return `Whether a jar can unlock it cannot be told: between ${figure(leftDeg.low, 4)}° and ${figure(leftDeg.high, 4)}° of lock is left. Measure lock, run and edge finer.`
}

/**
 * A freedom as a line of text for notes or a job sheet.
 * @example
 * freedomLine({ freedom: 'run', measured: { value: 0.3, low: 0.25, high: 0.35 }, limits: { low: 0.25, high: 0.5 }, verdict: 'within' }) // 'Run to the banking: 0.3 ± 0.05°, within (0.25 to 0.5°: Playtner 1910, p. 15)'
 */
export const freedomLine = ({ freedom, measured, limits, verdict }: FreedomFinding): string =>
  `${leverFreedoms[freedom].label}: ${measuredText(measured, '°')}, ${playVerdictWords[verdict].word} ` +
  `(${freedomStandardLine(freedom, limits)})`
