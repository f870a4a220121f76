import { OutsideRange } from '../formulas/outside-range.ts'
import { plain } from '../quantities/plain.ts'
import type { CaliberValues } from '../record/caliber.ts'
import { coilSpace } from './barrel-sizes.ts'
import { barrelTurnHours } from './barrel-turn.ts'
import { type EndMatch, endMatch } from './end-compatibility.ts'
import type { StockSpring } from './stock-spring.ts'

/** What a caliber asks of its spring. A figure that is not stated is NaN, so that nothing follows from it. */
export interface SpringTask {
  readonly values: CaliberValues
  readonly wallMm: number
  readonly hubMm: number
  readonly depthMm: number
  readonly heightMm: number
  readonly thicknessMm: number
  readonly lengthMm: number
  readonly hoursPerTurn: number
  readonly goingHours: number
  readonly stopWorkTurns: number
}

/** One spring held against a task: every figure that a verdict rests on, NaN where it cannot be known. */
export interface SpringCase {
  /** Free height of the barrel less the height of the strip. */
  clearanceMm: number
  /** Of the candidate less the one specified. */
  higherMm: number
  thickerMm: number
  longerShare: number
  /** For what barrel it is sold, as a share over the barrel at hand. */
  barrelOverShare: number
  fill: number
  turns: number
  hours: number
  torqueRate: number
  torqueFullWind: number
  end: EndMatch
  otherMaterial: boolean
  noneLeft: boolean
}

const spaceWithin = (values: CaliberValues): number => {
  if (values.barrelInsideMm === undefined) return Number.NaN
  try {
    return coilSpace(values, values.barrelInsideMm)
  } catch (error) {
    if (error instanceof OutsideRange) return Number.NaN
    throw error
  }
}

/**
 * What a caliber asks of its spring, read once for a whole tray.
 * @example
 * springTask({ barrelTeeth: 80, centrePinion: 10 }).hoursPerTurn // 8
 */
export const springTask = (values: CaliberValues): SpringTask => {
  const wallMm = spaceWithin(values)
  const hubMm = values.barrelArborMm ?? Number.NaN
  return {
    values,
    wallMm,
    hubMm: hubMm < wallMm ? hubMm : Number.NaN,
    depthMm: values.barrelDepthMm ?? Number.NaN,
    heightMm: values.springHeightMm ?? Number.NaN,
    thicknessMm: values.springThicknessMm ?? Number.NaN,
    lengthMm: values.springLengthMm ?? Number.NaN,
    hoursPerTurn: barrelTurnHours(values) ?? Number.NaN,
    goingHours: values.goingHours ?? Number.NaN,
    stopWorkTurns: values.stopWorkTurns ?? Number.POSITIVE_INFINITY,
  }
}

/** A case to be filled; one is enough for a whole tray. */
export const emptyCase = (): SpringCase => ({
  clearanceMm: Number.NaN,
  higherMm: Number.NaN,
  thickerMm: Number.NaN,
  longerShare: Number.NaN,
  barrelOverShare: Number.NaN,
  fill: Number.NaN,
  turns: Number.NaN,
  hours: Number.NaN,
  torqueRate: Number.NaN,
  torqueFullWind: Number.NaN,
  end: 'not-known',
  otherMaterial: false,
  noneLeft: false,
})

/**
 * Holds a spring against a task, in a case that is given, so that fifty thousand springs cost no memory. The geometry is
 * that of core/formulas/barrel.ts, and a test holds the two together.
 */
export const fillCase = (into: SpringCase, task: SpringTask, spring: StockSpring): SpringCase => {
  const { heightMm: height, thicknessMm: e, lengthMm: length = Number.NaN } = spring
  into.clearanceMm = plain(task.depthMm - height)
  into.higherMm = plain(height - task.heightMm)
  into.thickerMm = plain(e - task.thicknessMm)
  into.longerShare = plain(length / task.lengthMm - 1)
  into.barrelOverShare = spring.barrelMm === undefined ? Number.NaN : spring.barrelMm / task.wallMm - 1
  const wall = task.wallMm / 2
  const hub = task.hubMm / 2
  const strip = (length * e) / Math.PI
  into.fill = strip / (wall * wall - hub * hub)
  into.turns =
    into.fill < 1 ? (Math.sqrt(hub * hub + strip) - hub - wall + Math.sqrt(wall * wall - strip)) / e : Number.NaN
  into.hours = Math.min(into.turns, task.stopWorkTurns) * task.hoursPerTurn
  const relative = e / task.thicknessMm
  into.torqueFullWind = (height / task.heightMm) * relative * relative
  into.torqueRate = (into.torqueFullWind * relative * task.lengthMm) / length
  into.end = endMatch(spring.end, task.values.springEnd)
  into.otherMaterial =
    spring.material !== undefined &&
    task.values.springMaterial !== undefined &&
    spring.material !== task.values.springMaterial
  into.noneLeft = spring.inStock === 0
  return into
}
