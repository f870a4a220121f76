import { expect, it } from 'vitest'
import {
  bestSpringLength,
  insideWithinBridle,
  mostTurns,
  springCoils,
  springFill,
} from '../../../core/formulas/barrel.ts'
import { centreDistance } from '../../../core/formulas/centre-distance.ts'
import { circularPitch } from '../../../core/formulas/circular-pitch.ts'
import { handsGain, rateOfTrain } from '../../../core/formulas/hands-gain.ts'
import { lengthFromMass } from '../../../core/formulas/length-from-mass.ts'
import { moduleOfWheel } from '../../../core/formulas/module-of-wheel.ts'
import { OutsideRange } from '../../../core/formulas/outside-range.ts'
import { changeForGain } from '../../../core/formulas/regulation.ts'
import { arborToThickness, surfaceStrain } from '../../../core/formulas/spring-bend.ts'
import { torqueFullWindRatio, torqueRateRatio } from '../../../core/formulas/spring-torque.ts'
import { stripFromPack } from '../../../core/formulas/strip-from-pack.ts'
import { torqueAtStress, torquePerTurn, turnsToStress } from '../../../core/formulas/strip-torque.ts'
import { thicknessForTurns } from '../../../core/formulas/thickness-for-turns.ts'

const barrel = { barrelInsideMm: 12, barrelArborMm: 4, springThicknessMm: 0.12, springLengthMm: 400 }
const strip = { heightMm: 1.5, thicknessMm: 0.1, lengthMm: 360 }

const notPositive: readonly (readonly [field: string, formula: () => number | object])[] = [
  ['barrelInsideMm', () => springFill({ ...barrel, barrelInsideMm: 0 })],
  ['barrelArborMm', () => springFill({ ...barrel, barrelArborMm: 0 })],
  ['springThicknessMm', () => springFill({ ...barrel, springThicknessMm: 0 })],
  ['springLengthMm', () => springCoils({ ...barrel, springLengthMm: 0 })],
  ['springThicknessMm', () => bestSpringLength({ ...barrel, springThicknessMm: 0 })],
  ['springThicknessMm', () => mostTurns({ ...barrel, springThicknessMm: 0 })],
  ['barrelArborMm', () => mostTurns({ ...barrel, barrelArborMm: 0 })],
  ['moduleMm', () => centreDistance(0, 80, 10)],
  ['teeth', () => centreDistance(0.1, 0, 10)],
  ['teeth', () => centreDistance(0.1, 80, 0)],
  ['moduleMm', () => circularPitch(0)],
  ['pitchDiameterMm', () => moduleOfWheel(0, 80)],
  ['teeth', () => moduleOfWheel(9, 0)],
  ['beatRateVph', () => handsGain(0, 18000)],
  ['beatRateVph', () => handsGain(18000, 0)],
  ['beatRateVph', () => rateOfTrain(0, 10)],
  ['handsTurn', () => rateOfTrain(18000, -86400)],
  ['beatRateVph', () => changeForGain('length', -86400)],
  ['barrelArborMm', () => arborToThickness(0, 0.1)],
  ['springThicknessMm', () => arborToThickness(4, 0)],
  ['barrelArborMm', () => surfaceStrain(0, 0.1)],
  ['springThicknessMm', () => surfaceStrain(4, 0)],
  ['springHeightMm', () => torqueRateRatio({ ...strip, heightMm: 0 }, strip)],
  ['springThicknessMm', () => torqueRateRatio({ ...strip, thicknessMm: 0 }, strip)],
  ['springLengthMm', () => torqueRateRatio({ ...strip, lengthMm: 0 }, strip)],
  ['springHeightMm', () => torqueFullWindRatio({ ...strip, heightMm: 0 }, strip)],
  ['springThicknessMm', () => torqueFullWindRatio({ ...strip, thicknessMm: 0 }, strip)],
  ['modulusNPerMm2', () => torquePerTurn(strip, 0)],
  ['springHeightMm', () => torquePerTurn({ ...strip, heightMm: 0 }, 210000)],
  ['springThicknessMm', () => torquePerTurn({ ...strip, thicknessMm: 0 }, 210000)],
  ['springLengthMm', () => torquePerTurn({ ...strip, lengthMm: 0 }, 210000)],
  ['stressNPerMm2', () => torqueAtStress(strip, 0)],
  ['springHeightMm', () => torqueAtStress({ ...strip, heightMm: 0 }, 2000)],
  ['springThicknessMm', () => torqueAtStress({ ...strip, thicknessMm: 0 }, 2000)],
  ['stressNPerMm2', () => turnsToStress(strip, 0, 210000)],
  ['modulusNPerMm2', () => turnsToStress(strip, 2000, 0)],
  ['springThicknessMm', () => turnsToStress({ ...strip, thicknessMm: 0 }, 2000, 210000)],
  ['springLengthMm', () => turnsToStress({ ...strip, lengthMm: 0 }, 2000, 210000)],
  ['stripMassMg', () => lengthFromMass(0, strip)],
  ['densityGPerCm3', () => lengthFromMass(400, strip, 0)],
  ['springHeightMm', () => lengthFromMass(400, { ...strip, heightMm: 0 })],
  ['springThicknessMm', () => lengthFromMass(400, { ...strip, thicknessMm: 0 })],
  ['barrelInsideMm', () => stripFromPack(0, 1.2, 12)],
  ['packMm', () => stripFromPack(10, 0, 12)],
  ['coils', () => stripFromPack(10, 1.2, 0)],
  ['barrelInsideMm', () => thicknessForTurns(0, 4, 7)],
  ['barrelArborMm', () => thicknessForTurns(12, 0, 7)],
  ['turns', () => thicknessForTurns(12, 4, 0)],
]

const refusalOf = (formula: () => unknown): unknown => {
  try {
    return formula()
  } catch (error) {
    return error
  }
}

it.each(notPositive)('%s of nothing is refused by its name (%#)', (field, formula) => {
  const refusal = refusalOf(formula)
  expect(refusal).toBeInstanceOf(OutsideRange)
  expect(refusal).toMatchObject({ name: 'OutsideRange', code: 'not-positive', details: { field } })
  expect(refusal).toHaveProperty('details.value')
})

it('names the sizes that do not go together', () => {
  expect(refusalOf(() => springFill({ ...barrel, barrelArborMm: 12 }))).toMatchObject({
    code: 'arbor-fills-barrel',
    details: { barrelInsideMm: 12, barrelArborMm: 12 },
  })
  expect(refusalOf(() => springCoils({ ...barrel, springLengthMm: 900 }))).toMatchObject({
    code: 'spring-overfills-barrel',
    details: { fill: expect.closeTo(1.0743, 4) },
  })
  expect(refusalOf(() => insideWithinBridle(10, 5))).toMatchObject({
    code: 'bridle-fills-barrel',
    details: { barrelInsideMm: 10, bridleThicknessMm: 5 },
  })
  expect(refusalOf(() => thicknessForTurns(12, 12, 7))).toMatchObject({
    code: 'arbor-fills-barrel',
    details: { barrelInsideMm: 12, barrelArborMm: 12 },
  })
  expect(refusalOf(() => stripFromPack(10, 5, 12))).toMatchObject({
    code: 'pack-fills-barrel',
    details: { barrelInsideMm: 10, packMm: 5 },
  })
})

it('a spring that fills its barrel to the last is refused its coils, and one just short of it is not', () => {
  const full = { barrelInsideMm: 4, barrelArborMm: 2, springThicknessMm: Math.PI / 4, springLengthMm: 12 }
  expect(springFill(full)).toBe(1)
  expect(refusalOf(() => springCoils(full))).toMatchObject({ code: 'spring-overfills-barrel' })
  expect(springCoils({ ...full, springLengthMm: 11.99 }).turns).toBeGreaterThan(0)
})
