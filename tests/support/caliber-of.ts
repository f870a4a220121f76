import type { Caliber, CaliberValues, JewelGroup } from '../../core/record/caliber.ts'

/** A caliber with these values and jewels and nothing else. */
export const caliberOf = (values: CaliberValues, jewels: readonly JewelGroup[] = []): Caliber => ({
  values,
  readings: {},
  lists: { jewels, lubrication: [], depths: [], parts: [], stripOrder: [] },
})

/** The values without one of them. */
export const without = (values: CaliberValues, key: keyof CaliberValues): CaliberValues => {
  const { [key]: _, ...rest } = values
  return rest
}
