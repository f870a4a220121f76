import { springCoils } from '../../core/formulas/barrel.ts'
import { OutsideRange } from '../../core/formulas/outside-range.ts'
import type { CaliberValues } from '../../core/record/caliber.ts'
import { coilSpace } from '../../core/springs/barrel-sizes.ts'
import type { DrawnBarrel } from './barrel-views.tsx'

/** What of a caliber is drawn of its barrel, with its theoretical turns; null where a size is missing or they do not go together. */
export const drawnBarrel = (values: CaliberValues): (DrawnBarrel & { readonly turns: number }) | null => {
  const { barrelInsideMm: drumInsideMm, barrelArborMm, springThicknessMm, springLengthMm } = values
  const { barrelDepthMm, springHeightMm } = values
  if (
    drumInsideMm === undefined ||
    barrelArborMm === undefined ||
    springThicknessMm === undefined ||
    springLengthMm === undefined
  )
    return null
  try {
    const barrelInsideMm = coilSpace(values, drumInsideMm)
    const sizes = { barrelInsideMm, barrelArborMm, springThicknessMm, springLengthMm }
    return { sizes, drumInsideMm, barrelDepthMm, springHeightMm, turns: springCoils(sizes).turns }
  } catch (error) {
    if (error instanceof OutsideRange) return null
    throw error
  }
}
