import { springCoils } from '../formulas/barrel.ts'
import { OutsideRange } from '../formulas/outside-range.ts'
import type { CaliberValues } from '../record/caliber.ts'
import { barrelSizeKeys, coilSpace } from './barrel-sizes.ts'

type SizeKey = (typeof barrelSizeKeys)[number]

/** What an error in one size does to the turns. */
export interface Sensitivity {
  readonly field: SizeKey
  /** The error that is looked at. */
  readonly byMm: number
  readonly turns: number
  /** Change of the turns, and as a share of them. */
  readonly change: number
  readonly share: number
}

/** Errors that are easily made on the bench; our choice. */
const errors: Readonly<Record<SizeKey, number>> = {
  barrelInsideMm: 0.05,
  barrelArborMm: 0.05,
  springThicknessMm: 0.005,
  springLengthMm: 10,
}

/**
 * How much the theoretical turns change with a small error in each size, the size that matters most first. Empty where a
 * size is not stated or the sizes do not go together.
 * @example
 * sensitivities({ barrelInsideMm: 10, barrelArborMm: 10 / 3, springThicknessMm: 0.1, springLengthMm: 349.066 })[0]?.field // 'springThicknessMm'
 */
export const sensitivities = (values: CaliberValues): readonly Sensitivity[] => {
  const { barrelInsideMm, barrelArborMm, springThicknessMm, springLengthMm } = values
  if (
    barrelInsideMm === undefined ||
    barrelArborMm === undefined ||
    springThicknessMm === undefined ||
    springLengthMm === undefined
  ) {
    return []
  }
  const sizes = { barrelInsideMm, barrelArborMm, springThicknessMm, springLengthMm }
  try {
    const turnsOf = (of: typeof sizes) =>
      springCoils({ ...of, barrelInsideMm: coilSpace(values, of.barrelInsideMm) }).turns
    const before = turnsOf(sizes)
    return barrelSizeKeys
      .map((field) => {
        const turns = turnsOf({ ...sizes, [field]: sizes[field] + errors[field] })
        return { field, byMm: errors[field], turns, change: turns - before, share: turns / before - 1 }
      })
      .sort((a, b) => Math.abs(b.change) - Math.abs(a.change))
  } catch (error) {
    if (error instanceof OutsideRange) return []
    throw error
  }
}
