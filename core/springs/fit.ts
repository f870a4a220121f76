import { bestSpringLength, mostTurns, springCoils, springFill } from '../formulas/barrel.ts'
import { goingHours } from '../formulas/going-hours.ts'
import { OutsideRange } from '../formulas/outside-range.ts'
import { arborToThickness } from '../formulas/spring-bend.ts'
import { plain } from '../quantities/plain.ts'
import type { CaliberValues } from '../record/caliber.ts'
import { coilSpace } from './barrel-sizes.ts'
import { barrelTurnHours } from './barrel-turn.ts'

/** How a caliber's spring sits in its barrel; null where it cannot be known or the sizes allow no answer. */
export interface SpringFit {
  readonly coilsDown: number | null
  readonly coilsWound: number | null
  /** Theoretical (development) turns. */
  readonly turns: number | null
  /** Share of the free space: above 1 the spring cannot be got in. */
  readonly fill: number | null
  readonly bestLengthMm: number | null
  readonly mostTurns: number | null
  readonly hoursPerTurn: number | null
  /** Hours that the turns give, or the stop work's turns where they are fewer. */
  readonly goingHours: number | null
  readonly heightClearanceMm: number | null
  readonly arborToThickness: number | null
  readonly lengthToThickness: number | null
}

const orNull = <T>(formula: () => T): T | null => {
  try {
    return formula()
  } catch (error) {
    if (error instanceof OutsideRange) return null
    throw error
  }
}

/**
 * How a caliber's spring sits in its barrel: coils, turns, fill, hours, clearance and proportions.
 * @example
 * fitSpring({ barrelDepthMm: 1.6, springHeightMm: 1.5 }).heightClearanceMm // 0.1
 */
export const fitSpring = (values: CaliberValues): SpringFit => {
  const { barrelArborMm, springThicknessMm, springLengthMm, barrelDepthMm, springHeightMm, stopWorkTurns } = values
  const inside = values.barrelInsideMm
  const barrelInsideMm = inside === undefined ? undefined : orNull(() => coilSpace(values, inside))
  const barrel =
    barrelInsideMm == null || barrelArborMm === undefined || springThicknessMm === undefined
      ? null
      : { barrelInsideMm, barrelArborMm, springThicknessMm }
  const sizes = barrel === null || springLengthMm === undefined ? null : { ...barrel, springLengthMm }

  const coils = sizes && orNull(() => springCoils(sizes))
  const hoursPerTurn = barrelTurnHours(values)
  const springTurns = sizes === null ? stopWorkTurns : coils?.turns
  const usable = springTurns === undefined ? null : Math.min(springTurns, stopWorkTurns ?? springTurns)
  return {
    coilsDown: coils?.down ?? null,
    coilsWound: coils?.wound ?? null,
    turns: coils?.turns ?? null,
    fill: sizes && orNull(() => springFill(sizes)),
    bestLengthMm: barrel && orNull(() => bestSpringLength(barrel)),
    mostTurns: barrel && orNull(() => mostTurns(barrel)),
    hoursPerTurn,
    goingHours: hoursPerTurn === null || usable === null ? null : goingHours(usable, hoursPerTurn),
    heightClearanceMm:
      barrelDepthMm === undefined || springHeightMm === undefined ? null : plain(barrelDepthMm - springHeightMm),
    arborToThickness:
      barrelArborMm === undefined || springThicknessMm === undefined
        ? null
        : orNull(() => arborToThickness(barrelArborMm, springThicknessMm)),
    lengthToThickness:
      springLengthMm === undefined || springThicknessMm === undefined ? null : springLengthMm / springThicknessMm,
  }
}
