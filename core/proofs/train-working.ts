import type { Stage } from '../formulas/train-stages.ts'
import type { CaliberValues } from '../record/caliber.ts'
import { asWritten } from './exact-value.ts'
import type { WorkingStep } from './proof.ts'
import type { TrainRate } from './rate-of-train.ts'

/**
 * A chain of pairs as written on paper.
 * @example
 * fractionsOf([80, 75], [10, 10]) // '80/10 × 75/10'
 */
export const fractionsOf = (wheels: readonly number[], pinions: readonly number[]): string => {
  let text = ''
  wheels.forEach((teeth, i) => {
    text += `${i === 0 ? '' : ' × '}${teeth}/${pinions[i]}`
  })
  return text
}

/** The counts of a chain of pairs by their field. */
export const countsWhere = (values: CaliberValues, stages: readonly Stage[]): Record<string, number> => {
  const where: Record<string, number> = {}
  for (const { wheel, pinion } of stages) {
    const teeth = values[wheel]
    const leaves = values[pinion]
    if (teeth !== undefined) where[wheel] = teeth
    if (leaves !== undefined) where[pinion] = leaves
  }
  return where
}

/** The beat rate of a train as worked out on paper: its pairs, two vibrations for each escape tooth, the hours of a centre turn. */
export const rateStep = (
  values: CaliberValues,
  { exact, stages, wheels, pinions, escapeTeeth, hours }: TrainRate,
): WorkingStep => ({
  formula: `${fractionsOf(wheels, pinions)} × 2 × ${escapeTeeth}${hours === undefined ? '' : ` ÷ ${hours.toFraction(true)}`}`,
  where: {
    ...countsWhere(values, stages),
    escapeTeeth,
    ...(values.hoursPerCentreTurn === undefined ? {} : { hoursPerCentreTurn: values.hoursPerCentreTurn }),
  },
  gives: asWritten(exact),
})
