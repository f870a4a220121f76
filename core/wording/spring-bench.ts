import type { CaliberFieldKey } from '../fields/caliber-fields.ts'
import { labelOf } from '../record/label-of.ts'
import type { FitLineKey } from '../springs/fit-working.ts'
import type { Sensitivity } from '../springs/sensitivity.ts'
import type { UsableTurns } from '../springs/usable-turns.ts'
import { figure } from './figure.ts'
import { listed } from './listed.ts'
import { torqueBand } from './spring-reason.ts'

/** What each figure of a spring in its barrel is called at the bench. */
export const fitLineNames: Readonly<Record<FitLineKey, string>> = {
  'within-bridle': 'Inside, within the bridle',
  'coils-down': 'Coils let down',
  'coils-wound': 'Coils wound',
  turns: 'Theoretical turns',
  fill: 'Fill of the free space',
  'best-length': 'Best length',
  'most-turns': 'Most turns of any length',
  'hours-per-turn': 'Hours a turn',
  hours: 'Hours',
  'height-clearance': 'Play under the lid',
  'arbor-to-thickness': 'Hub to thickness',
}

/**
 * What a figure waits for.
 * @example
 * waitsFor(['springLengthMm']) // 'not stated: spring length'
 */
export const waitsFor = (missing: readonly CaliberFieldKey[]): string =>
  `not stated: ${listed(missing.map((key) => labelOf(key).toLowerCase()))}`

/**
 * What stands between the theoretical turns and those that can be used.
 * @example
 * usableTurnsSentence({ turns: 4, boundBy: 'stop-work' }) // '4: the stop work lets no more be used.'
 */
export const usableTurnsSentence = ({ turns, boundBy }: UsableTurns): string => {
  switch (boundBy) {
    case 'stop-work':
      return `${figure(turns, 2)}: the stop work lets no more be used.`
    case 'slipping-bridle':
      return `At most ${figure(turns, 2)}: the bridle slips before full wind, so the theoretical turns are an upper bound.`
    case 'end-coils':
      return `Fewer than ${figure(turns, 2)}: the end coils and the weak end near let-down are not used, which costs up to one or two turns.`
  }
}

const sizeNames: Readonly<Record<Sensitivity['field'], string>> = {
  barrelInsideMm: 'barrel inside',
  barrelArborMm: 'hub',
  springThicknessMm: 'thickness',
  springLengthMm: 'length',
}

const signed = (value: number, decimals: number): string => `${value > 0 ? '+' : ''}${figure(value, decimals)}`

/**
 * What an error in one size does to the turns.
 * @example
 * sensitivityLine({ field: 'springThicknessMm', byMm: 0.005, turns: 7.47, change: -0.387, share: -0.0492 }) // '0.005 mm more thickness: −0.39 turns (−4.9 %)'
 */
export const sensitivityLine = ({ field, byMm, change, share }: Sensitivity): string =>
  `${figure(byMm, 3)} mm more ${sizeNames[field]}: ${signed(change, 2)} turns (${signed(share * 100, 1)} %)`

/** What another strip does to the torque, as the band between its two bounds, and why no more can be said. */
export const torqueSentence = (fullWind: number, rate: number): string =>
  `About ${torqueBand(fullWind, rate)} torque than the spring specified, if the alloy is the same. At full wind torque goes as ` +
  'height × thickness², in each turn as height × thickness³ ÷ length; the truth lies between. How much torque it is cannot be told from sizes.' +
  (fullWind > 1
    ? ' The movement was designed for one strength; a tired movement wants cleaning and repair, not force.'
    : '')

/**
 * A state of winding in words.
 * @example
 * woundText(3.2, 8.8, 8) // '3.2 turns wound, 25.6 h'
 */
export const woundText = (turnsWound: number, turns: number, hoursPerTurn: number | null): string => {
  if (turnsWound <= 0) return 'let down'
  const hours = hoursPerTurn === null ? '' : `, ${figure(turnsWound * hoursPerTurn, 1)} h`
  return turnsWound >= turns
    ? `wound: ${figure(turns, 2)} theoretical turns${hours}`
    : `${figure(turnsWound, 1)} turns wound${hours}`
}
