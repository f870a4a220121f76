import { onPaper } from '../quantities/on-paper.ts'
import type { MeasuredStrip, StripUncertainty } from './compare-strip.ts'

/** An observation of the bench, as the library file holds those of a movement. */
export interface Observed {
  readonly field: 'springHeightMm' | 'springThicknessMm' | 'springLengthMm' | 'springEnd'
  readonly measured: string
  readonly uncertaintyMm?: number
  readonly instrument: string
}

/** How the length was come by. */
export const lengthWays = {
  'laid-out': 'rule',
  weighed: 'balance',
  'coils-and-pack': 'coils counted, pack measured',
} as const
export type LengthWay = keyof typeof lengthWays

const observed = (
  field: Observed['field'],
  mm: number | undefined,
  uncertaintyMm: number,
  instrument: string,
): readonly Observed[] =>
  mm === undefined ? [] : [{ field, measured: String(onPaper(mm)), uncertaintyMm, instrument }]

/**
 * What was measured of a strip as observations of the bench; what was not measured is left out.
 * @example
 * observedStrip({ heightMm: 1.5 }, { heightMm: 0.02, thicknessMm: 0.002, lengthMm: 5 }, 'laid-out')[0]?.measured // '1.5'
 */
export const observedStrip = (
  strip: MeasuredStrip,
  uncertainty: StripUncertainty,
  lengthWay: LengthWay,
): readonly Observed[] => [
  ...observed('springHeightMm', strip.heightMm, uncertainty.heightMm, 'micrometer'),
  ...observed('springThicknessMm', strip.thicknessMm, uncertainty.thicknessMm, 'micrometer'),
  ...observed('springLengthMm', strip.lengthMm, uncertainty.lengthMm, lengthWays[lengthWay]),
  ...(strip.end === undefined ? [] : [{ field: 'springEnd', measured: strip.end, instrument: 'eye' } as const]),
]
