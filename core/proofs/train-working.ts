import type { Stage } from '../formulas/train-stages.ts'
import type { CaliberValues } from '../record/caliber.ts'

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
