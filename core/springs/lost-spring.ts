import { bestSpringLength, springCoils } from '../formulas/barrel.ts'
import { thicknessForTurns } from '../formulas/thickness-for-turns.ts'
import type { CaliberValues } from '../record/caliber.ts'
import { coilSpace } from './barrel-sizes.ts'
import { barrelTurnHours } from './barrel-turn.ts'

/** What an estimate rests on, or what is odd in it; `core/wording/lost-spring-remark.ts` says it. */
export interface LostSpringRemark {
  readonly code:
    | 'turns-given'
    | 'turns-from-hours'
    | 'turns-from-stop-work'
    | 'turns-from-proportion'
    | 'arbor-assumed'
    | 'height-from-depth'
    | 'depth-not-stated'
    | 'bridle-not-stated'
    | 'arbor-thin'
    | 'arbor-thick'
  readonly figures: Readonly<Record<string, number>>
}

/** A spring of a stock thickness at its best length. */
export interface StockStep {
  readonly thicknessMm: number
  readonly lengthMm: number
  /** Theoretical (development) turns. */
  readonly turns: number
}

export interface SpringEstimate extends StockStep {
  /** Null where the depth of the barrel is not stated. */
  readonly heightMm: number | null
  /** Before rounding to the stock step. */
  readonly exact: { readonly thicknessMm: number; readonly lengthMm: number }
  /** The stock thicknesses on either side. */
  readonly thinner: StockStep | null
  readonly thicker: StockStep
  readonly remarks: readonly LostSpringRemark[]
}

/** Springs are stocked in steps of 0.005 mm of thickness and 0.05 mm of height (common practice). */
const thicknessStepMm = 0.005
const heightStepMm = 0.05
/** Play under a flat lid. H. Jendritzki, Die Zugfeder, 1950, section 1 (extract). */
const playMm = 0.1
/** Turns that are not used near let-down: one to two (second-hand); the middle of it. */
const slackTurns = 1.5
/** Set-up and what is left unused beside the turns of a stop work; at least one each. Our choice. */
const besideStopWork = 2
/** With neither hours nor turns: the barrel is 75 to 100 thicknesses wide (derived from hub ratios of 25 to 32); the middle of it. */
const barrelToThickness = 87.5
const barrelToArbor = 3
const usualArborToThickness = [20, 40] as const

const steps = (mm: number, step: number, round: (value: number) => number): number =>
  Math.round(round(Math.round((mm / step) * 1e6) / 1e6) * step * 1e6) / 1e6

/**
 * Estimates a spring that is lost, from its barrel and how long the movement went; null where the barrel's inside is not
 * stated. `turns` are the theoretical turns wanted, where they are known otherwise.
 * @throws OutsideRange where the sizes of the barrel leave no room
 * @example
 * lostSpring({ barrelInsideMm: 11.5, barrelArborMm: 3.6 }, 7.5)?.thicknessMm // 0.13
 */
export const lostSpring = (values: CaliberValues, turns?: number): SpringEstimate | null => {
  if (values.barrelInsideMm === undefined) return null
  const remarks: LostSpringRemark[] = []
  const remark = (code: LostSpringRemark['code'], figures: LostSpringRemark['figures'] = {}) =>
    remarks.push({ code, figures })

  const inside = coilSpace(values, values.barrelInsideMm)
  if (values.springEnd === 'slipping-bridle' && values.bridleThicknessMm === undefined) remark('bridle-not-stated')
  const arbor = values.barrelArborMm ?? inside / barrelToArbor
  if (values.barrelArborMm === undefined) remark('arbor-assumed', { arborMm: arbor })

  const exactThickness = thicknessWanted(values, { inside, arbor }, turns, remark)
  const at = (thicknessMm: number): StockStep => {
    const sizes = { barrelInsideMm: inside, barrelArborMm: arbor, springThicknessMm: thicknessMm }
    const lengthMm = bestSpringLength(sizes)
    return { thicknessMm, lengthMm, turns: springCoils({ ...sizes, springLengthMm: lengthMm }).turns }
  }
  const rounded = Math.max(thicknessStepMm, steps(exactThickness, thicknessStepMm, Math.round))
  const bend = arbor / rounded
  if (bend < usualArborToThickness[0]) remark('arbor-thin', { ratio: bend })
  if (bend > usualArborToThickness[1]) remark('arbor-thick', { ratio: bend })

  const { barrelDepthMm: depth } = values
  const heightMm = depth === undefined ? null : steps(depth - playMm, heightStepMm, Math.floor)
  if (depth === undefined) remark('depth-not-stated')
  else remark('height-from-depth', { depthMm: depth, playMm })
  return {
    heightMm: heightMm !== null && heightMm > 0 ? heightMm : null,
    ...at(rounded),
    exact: { thicknessMm: exactThickness, lengthMm: at(exactThickness).lengthMm },
    thinner: rounded > thicknessStepMm ? at(steps(rounded - thicknessStepMm, thicknessStepMm, Math.round)) : null,
    thicker: at(steps(rounded + thicknessStepMm, thicknessStepMm, Math.round)),
    remarks,
  }
}

const thicknessWanted = (
  values: CaliberValues,
  { inside, arbor }: { readonly inside: number; readonly arbor: number },
  given: number | undefined,
  remark: (code: LostSpringRemark['code'], figures: LostSpringRemark['figures']) => void,
): number => {
  if (given !== undefined) {
    remark('turns-given', { turns: given })
    return thicknessForTurns(inside, arbor, given)
  }
  const { stopWorkTurns: stop, goingHours: hours } = values
  if (stop !== undefined) {
    const turns = stop + besideStopWork
    remark('turns-from-stop-work', { stop, beside: besideStopWork, turns })
    return thicknessForTurns(inside, arbor, turns)
  }
  const hoursPerTurn = barrelTurnHours(values)
  if (hours !== undefined && hoursPerTurn !== null) {
    const turns = hours / hoursPerTurn + slackTurns
    remark('turns-from-hours', { hours, hoursPerTurn, slack: slackTurns, turns })
    return thicknessForTurns(inside, arbor, turns)
  }
  remark('turns-from-proportion', { share: barrelToThickness })
  return inside / barrelToThickness
}
