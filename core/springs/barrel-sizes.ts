import { insideWithinBridle } from '../formulas/barrel.ts'
import type { CaliberValues } from '../record/caliber.ts'

/** The sizes that fix a spring in its barrel. */
export const barrelSizeKeys = [
  'barrelInsideMm',
  'barrelArborMm',
  'springThicknessMm',
  'springLengthMm',
] as const satisfies readonly (keyof CaliberValues)[]

/**
 * The inside diameter that the coils have: less twice the bridle where one lines the wall and its thickness is stated.
 * @throws OutsideRange where the bridle leaves no space.
 * @example
 * coilSpace({ springEnd: 'slipping-bridle', bridleThicknessMm: 0.12 }, 10) // 9.76
 */
export const coilSpace = (
  values: Pick<CaliberValues, 'springEnd' | 'bridleThicknessMm'>,
  barrelInsideMm: number,
): number =>
  values.springEnd === 'slipping-bridle' && values.bridleThicknessMm !== undefined
    ? insideWithinBridle(barrelInsideMm, values.bridleThicknessMm)
    : barrelInsideMm
