import { inertiaForRate, rateOfBalance, stiffnessForRate } from '../formulas/balance-oscillator.ts'
import { dailyDifference } from '../formulas/daily-difference.ts'
import { inertiaOfRing } from '../formulas/inertia-of-ring.ts'
import { rateForms, vibrationsPerHour } from '../formulas/rate-forms.ts'
import { changeForGain, type RegulatedPart } from '../formulas/regulation.ts'
import { stiffnessFromTorque } from '../formulas/stiffness-from-torque.ts'
import type { WorkingStep } from '../proofs/proof.ts'

/** Newton metres in a micronewton metre, in which hairsprings come to handy figures. */
const nmPerMicroNm = 1e-6

/** What is known of a balance and its hairspring: the rate and one of the two, or both. */
export interface BalanceKnown {
  readonly beatRateVph: number
  readonly inertiaMgCm2?: number
  /** In micronewton metres a radian. */
  readonly stiffnessMicroNm?: number
}

/** What follows of a balance and its hairspring, with the working. */
export type BalanceHelp =
  | { readonly finds: 'stiffness'; readonly stiffnessMicroNm: number; readonly working: WorkingStep }
  | { readonly finds: 'inertia'; readonly inertiaMgCm2: number; readonly working: WorkingStep }
  | {
      readonly finds: 'rate'
      readonly beatRateVph: number
      /** Against the stated rate. */
      readonly secondsPerDay: number
      readonly working: WorkingStep
    }

const short = (value: number): number => Number(value.toPrecision(5))

/** The third of rate, inertia and stiffness from the other two; the rate where both are known, null where neither is. */
export const balanceHelp = ({ beatRateVph, inertiaMgCm2, stiffnessMicroNm }: BalanceKnown): BalanceHelp | null => {
  const hertz = short(rateForms(beatRateVph).hertz)
  const where = {
    beatRateVph,
    ...(inertiaMgCm2 === undefined ? {} : { inertiaMgCm2 }),
    ...(stiffnessMicroNm === undefined ? {} : { stiffnessMicroNm }),
  }
  if (inertiaMgCm2 !== undefined && stiffnessMicroNm !== undefined) {
    const found = rateOfBalance(inertiaMgCm2, stiffnessMicroNm * nmPerMicroNm)
    return {
      finds: 'rate',
      beatRateVph: found,
      secondsPerDay: dailyDifference(found, beatRateVph),
      working: {
        formula: `7200 ÷ (2π × √(${inertiaMgCm2} × 10⁻⁴ ÷ ${stiffnessMicroNm}))`,
        where,
        gives: `${Math.round(found)} vph`,
      },
    }
  }
  if (inertiaMgCm2 !== undefined) {
    const found = stiffnessForRate(inertiaMgCm2, beatRateVph) / nmPerMicroNm
    const working = {
      formula: `${inertiaMgCm2} × 10⁻⁴ × (2π × ${hertz})²`,
      where,
      gives: `${short(found)} µN·m/rad`,
    }
    return { finds: 'stiffness', stiffnessMicroNm: found, working }
  }
  if (stiffnessMicroNm !== undefined) {
    const found = inertiaForRate(stiffnessMicroNm * nmPerMicroNm, beatRateVph)
    const working = {
      formula: `${stiffnessMicroNm} × 10⁴ ÷ (2π × ${hertz})²`,
      where,
      gives: `${short(found)} mg·cm²`,
    }
    return { finds: 'inertia', inertiaMgCm2: found, working }
  }
  return null
}

const regulatedParts: readonly RegulatedPart[] = ['inertia', 'stiffness', 'length']

/** By how many hundredths inertia, stiffness or length must change to take a gain out, each alone. */
export const changesAgainst = (
  gainSecondsPerDay: number,
): readonly { readonly part: RegulatedPart; readonly percent: number }[] =>
  regulatedParts.map((part) => ({ part, percent: 100 * changeForGain(part, -gainSecondsPerDay) }))

/** A college example as printed: a thin ring on a spring, its mass to be found. */
const ringExample = { torqueNm: 1.1e-5, angleDeg: 45, hertz: 3.1, radiusMm: 9.5, printedMassG: '0.41' } as const

/** The published example of balance and hairspring, worked from our own formulas. */
export const publishedBalance = (): { readonly printedMassG: string; readonly working: readonly WorkingStep[] } => {
  const { torqueNm, angleDeg, hertz, radiusMm, printedMassG } = ringExample
  const stiffness = stiffnessFromTorque(torqueNm, angleDeg)
  const inertia = inertiaForRate(stiffness, vibrationsPerHour(hertz))
  const massMg = inertia / inertiaOfRing(1, radiusMm)
  return {
    printedMassG,
    working: [
      {
        formula: `${short(torqueNm / nmPerMicroNm)} ÷ (${angleDeg}° × π ÷ 180°)`,
        where: { torqueNm, angleDeg },
        gives: `${short(stiffness / nmPerMicroNm)} µN·m/rad`,
      },
      {
        formula: `${short(stiffness / nmPerMicroNm)} × 10⁴ ÷ (2π × ${hertz})²`,
        where: { hertz },
        gives: `${short(inertia)} mg·cm²`,
      },
      {
        formula: `${short(inertia)} ÷ ${radiusMm / 10}²`,
        where: { radiusMm },
        gives: `${Math.round(massMg)} mg`,
      },
    ],
  }
}
