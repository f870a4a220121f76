import Fraction from 'fraction.js'
import type { CaliberValues } from '../record/caliber.ts'
import { hasFourthArbor } from './fourth-arbor.ts'
import { gearRatio } from './gear-ratio.ts'
import { stagesFromCentre, stagesToCentre, type TrainArbor, thirdToSweep } from './train-stages.ts'

/** An arbor with its counts as stated and its speed where the counts from the centre to it are all stated. */
export interface Arbor {
  readonly arbor: TrainArbor | 'sweep'
  readonly pinion?: number
  /** The wheel that drives the next arbor; on the barrel its teeth, on the escape arbor the escape teeth. */
  readonly wheel?: number
  readonly turnsPerHour: Fraction | null
}

/** A pair in mesh. */
export interface Mesh {
  readonly driver: Arbor['arbor']
  readonly driven: Arbor['arbor']
  readonly wheel?: number
  readonly pinion?: number
  /** Turns of the driven arbor for one of the driver; null where a count is not stated. */
  readonly ratio: Fraction | null
}

export interface GoingTrain {
  /** From the barrel to the escape arbor; an indirect sweep seconds arbor, driven from the third, stands last. */
  readonly arbors: readonly Arbor[]
  readonly meshes: readonly Mesh[]
}

const meshOf = (
  driver: Arbor['arbor'],
  driven: Arbor['arbor'],
  wheel: number | undefined,
  pinion: number | undefined,
): Mesh => ({
  driver,
  driven,
  ...(wheel === undefined ? {} : { wheel }),
  ...(pinion === undefined ? {} : { pinion }),
  ratio: wheel === undefined || pinion === undefined ? null : gearRatio([wheel], [pinion]),
})

/**
 * The going train of a caliber: its arbors in order, the pairs between them, and the turns of each arbor in an hour.
 *
 * Each arbor turns as often as the one before × wheel / pinion; the centre arbor turns 1/H times an hour.
 * Units: counts of teeth and leaves; H = hours per centre turn; turns per hour, exact.
 * @validity Any number of pairs: with or without intermediate, fourth and fifth arbor. A fourth arbor whose counts are
 * not stated is left out only where the train gives the stated rate without it.
 * @source W. Derham, The Artificial Clock-maker, 1696, pp. 10–13; W. L. Goodrich, The Modern Clock, 1905, pp. 257–265.
 * @example
 * goingTrain({ barrelTeeth: 80, centrePinion: 10 }).arbors[0]?.turnsPerHour?.toFraction() // '1/8'
 */
export const goingTrain = (values: CaliberValues, exactHoursPerCentreTurn?: Fraction): GoingTrain => {
  const hours =
    exactHoursPerCentreTurn ??
    (values.hoursPerCentreTurn === undefined ? new Fraction(1) : new Fraction(values.hoursPerCentreTurn))
  const before = stagesToCentre(values)
  const after = stagesFromCentre(values, hasFourthArbor(values) !== false)
  const sweep = values.sweepDriver === undefined && values.sweepPinion === undefined ? [] : [thirdToSweep]
  const meshes = [...before, ...after, ...sweep].map(({ driver, driven, wheel, pinion }) =>
    meshOf(driver, driven, values[wheel], values[pinion]),
  )

  const speeds = new Map<Arbor['arbor'], Fraction | null>([['centre', hours.inverse()]])
  for (const { driver, driven, ratio } of meshes.slice(0, before.length).reverse()) {
    const speed = speeds.get(driven) ?? null
    speeds.set(driver, speed === null || ratio === null ? null : speed.div(ratio))
  }
  for (const { driver, driven, ratio } of meshes.slice(before.length)) {
    const speed = speeds.get(driver) ?? null
    speeds.set(driven, speed === null || ratio === null ? null : speed.mul(ratio))
  }

  const order: Arbor['arbor'][] = ['barrel', ...meshes.map(({ driven }) => driven)]
  const arbors = order.map((arbor): Arbor => {
    const pinion = meshes.find((mesh) => mesh.driven === arbor)?.pinion
    const wheel = arbor === 'escape' ? values.escapeTeeth : meshes.find((mesh) => mesh.driver === arbor)?.wheel
    return {
      arbor,
      ...(pinion === undefined ? {} : { pinion }),
      ...(wheel === undefined ? {} : { wheel }),
      turnsPerHour: speeds.get(arbor) ?? null,
    }
  })
  return { arbors, meshes }
}
