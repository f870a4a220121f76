import { positive } from './positive.ts'

/**
 * Length of a strip from its weight.
 *
 * L = m / (ρ h e).
 * Units: mass in mg, sizes in mm, density in g/cm³ (which is mg/mm³); mm out.
 * @validity A bare strip: bridle, brace and riveted end weigh too. Density 7.85 g/cm³ for steel.
 * @source Definition of density; 7.85 g/cm³ is the handbook figure for steel.
 * @throws OutsideRange where a figure is not above zero.
 * @example
 * lengthFromMass(411.03, { heightMm: 1.5, thicknessMm: 0.1 }) // 349.07
 */
export const lengthFromMass = (
  massMg: number,
  strip: { readonly heightMm: number; readonly thicknessMm: number },
  densityGPerCm3 = 7.85,
): number =>
  positive('stripMassMg', massMg) /
  (positive('densityGPerCm3', densityGPerCm3) *
    positive('springHeightMm', strip.heightMm) *
    positive('springThicknessMm', strip.thicknessMm))
