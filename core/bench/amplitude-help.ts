import { amplitude, type LiftReading, liftTime, usualAmplitude } from '../formulas/amplitude.ts'
import { amplitudeAtLiftAngle } from '../formulas/amplitude-at-lift-angle.ts'
import { supplementaryArc, totalSwing } from '../formulas/balance-arc.ts'
import type { WorkingStep } from '../proofs/proof.ts'

/** An amplitude from a lift time by both formulas. */
export interface AmplitudeHelp {
  readonly exact: number
  readonly usual: number
  /** The usual less the exact one. */
  readonly difference: number
  readonly totalSwing: number
  /** The part of the swing in which the balance is free of the fork. */
  readonly free: number
  /** Above some 330° the impulse pin strikes the outside of the fork; common practice, from memory. */
  readonly knocks: boolean
  readonly exactWorking: WorkingStep
  readonly usualWorking: WorkingStep
}

const knocksFrom = 330
const degrees = (value: number): string => `${value.toFixed(2)}°`

/** Where a degree more or less can stand for wear, haste or a wrong line of a table. */
const strayedDegrees = [-2, -1, 0, 1, 2] as const

/** The amplitude of a balance from its lift angle, beat rate and lift time. */
export const amplitudeHelp = (reading: LiftReading): AmplitudeHelp => {
  const { liftAngleDeg, beatRateVph, liftTimeMs } = reading
  const exact = amplitude(reading)
  const usual = usualAmplitude(reading)
  const seconds = Number((liftTimeMs / 1000).toPrecision(12))
  const where = { liftAngleDeg, beatRateVph, liftTimeMs }
  return {
    exact,
    usual,
    difference: usual - exact,
    totalSwing: totalSwing(exact),
    free: supplementaryArc(exact, liftAngleDeg),
    knocks: exact > knocksFrom,
    exactWorking: {
      formula: `${liftAngleDeg}° ÷ (2 × sin(180° × ${beatRateVph} × ${seconds} ÷ 7200))`,
      where,
      gives: degrees(exact),
    },
    usualWorking: {
      formula: `3600 × ${liftAngleDeg}° ÷ (π × ${beatRateVph} × ${seconds})`,
      where,
      gives: degrees(usual),
    },
  }
}

/** What would be read of one swing with the lift angle set a degree or two wrong. */
export const amplitudesAtOtherLiftAngles = (
  amplitudeDeg: number,
  liftAngleDeg: number,
): readonly { readonly liftAngleDeg: number; readonly amplitudeDeg: number }[] =>
  strayedDegrees
    .map((more) => liftAngleDeg + more)
    .filter((other) => other > 0)
    .map((other) => ({
      liftAngleDeg: other,
      amplitudeDeg: amplitudeAtLiftAngle(amplitudeDeg, liftAngleDeg, other),
    }))

const tabulated = [180, 200, 220, 240, 250, 260, 270, 280, 290, 300, 315] as const

/** The lift times of a movement at the amplitudes that are met with, the least swing first. */
export const liftTimes = (
  liftAngleDeg: number,
  beatRateVph: number,
): readonly { readonly amplitudeDeg: number; readonly liftTimeMs: number }[] =>
  tabulated
    .filter((amplitudeDeg) => 2 * amplitudeDeg >= liftAngleDeg)
    .map((amplitudeDeg) => ({ amplitudeDeg, liftTimeMs: liftTime({ liftAngleDeg, beatRateVph, amplitudeDeg }) }))
