import Fraction from 'fraction.js'
import { type Arbor, goingTrain, type Mesh } from '../formulas/going-train.ts'
import type { CaliberValues } from '../record/caliber.ts'
import { asWritten } from './exact-value.ts'
import type { WorkingStep } from './proof.ts'

const one = new Fraction(1)
const written = (value: Fraction): string => String(asWritten(value))
const nameOf = (arbor: Arbor['arbor']): string =>
  arbor === 'barrel' ? 'barrel' : arbor === 'sweep' ? 'sweep seconds arbor' : `${arbor} arbor`

const sumOfCentre = (hours?: Fraction): string => (hours === undefined ? '' : `: 1 ÷ ${written(hours)}`)

/** The sum by which an arbor's turns follow from those of its neighbour on the side of the centre. */
const sumOf = (arbor: Arbor['arbor'], meshes: readonly Mesh[], speeds: ReadonlyMap<Arbor['arbor'], Fraction>) => {
  // The pairs before the centre are worked backwards from it, so there the neighbour is the driven arbor.
  const before = meshes.find(({ driver }) => driver === arbor && (arbor === 'barrel' || arbor === 'intermediate'))
  const pair = before ?? meshes.find(({ driven }) => driven === arbor)
  const from = pair && speeds.get(before === undefined ? pair.driver : pair.driven)
  if (pair === undefined || from === undefined) return ''
  const times = before === undefined ? '×' : '÷'
  const ratio = `${pair.wheel}/${pair.pinion}`
  return from.equals(one) && before === undefined ? `: ${ratio}` : `: ${written(from)} ${times} ${ratio}`
}

/**
 * The turns an hour of every arbor of a train, one line each from the barrel on, as far as the counts are stated.
 * @example
 * arborWorking({ centreWheel: 80, thirdPinion: 10 })[1]?.formula // 'third arbor: 80/10'
 */
export const arborWorking = (values: CaliberValues, hoursPerCentreTurn?: Fraction): readonly WorkingStep[] => {
  const { arbors, meshes } = goingTrain(values, hoursPerCentreTurn)
  const speeds = new Map(arbors.flatMap(({ arbor, turnsPerHour: turns }) => (turns === null ? [] : [[arbor, turns]])))
  return [...speeds].map(([arbor, turns]) => ({
    formula: nameOf(arbor) + (arbor === 'centre' ? sumOfCentre(hoursPerCentreTurn) : sumOf(arbor, meshes, speeds)),
    where: {},
    gives: turns.mul(1000).d === 1n ? turns.valueOf() : turns.toFraction(true),
    unit: turns.compare(one) > 0 ? 'turns an hour' : 'turn an hour',
  }))
}
