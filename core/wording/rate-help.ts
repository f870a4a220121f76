import type { AmplitudeHelp } from '../bench/amplitude-help.ts'
import type { BalanceHelp } from '../bench/balance-help.ts'
import type { RateLine } from '../bench/rate-working.ts'
import type { RegulatedPart } from '../formulas/regulation.ts'
import { figure } from './figure.ts'

/** The names of the forms of a rate. */
export const rateFormNames: Readonly<Record<RateLine['form'], string>> = {
  hertz: 'Frequency',
  'beats-a-second': 'Beats a second',
  'beats-a-minute': 'Beats a minute',
  vibration: 'Time of a vibration',
  oscillation: 'Time of an oscillation',
}

/** What the two formulas make of one swing, and what it means. */
export const amplitudeSentence = ({ difference, totalSwing, free, knocks }: AmplitudeHelp): string =>
  `The usual formula reads ${figure(-difference, 2)}° low. The whole swing is ${figure(totalSwing, 1)}°, of which the ` +
  `balance is free of the fork for ${figure(free, 1)}°.` +
  (knocks ? ' So great a swing would knock: check lift angle, beat rate and lift time before you believe it.' : '')

/** What a lift angle wrong by one degree does to the amplitude read. */
export const wrongLiftSentence = (amplitudeDeg: number, liftAngleDeg: number): string =>
  `One degree wrong in ${figure(liftAngleDeg)} shifts every amplitude by ${figure(100 / liftAngleDeg, 1)} %: ` +
  `${figure(amplitudeDeg / liftAngleDeg, 1)}° at ${figure(amplitudeDeg, 1)}°.`

/** What was found of a balance and its hairspring. */
export const balanceSentence = (help: BalanceHelp): string => {
  switch (help.finds) {
    case 'stiffness':
      return `The hairspring must have ${Number(help.stiffnessMicroNm.toPrecision(4))} µN·m a radian for this rate.`
    case 'inertia':
      return `The balance must have ${Number(help.inertiaMgCm2.toPrecision(4))} mg·cm² for this rate.`
    case 'rate': {
      const off = help.secondsPerDay
      const stated =
        Math.abs(off) < 0.05
          ? 'the stated rate'
          : `${figure(Math.abs(off), 1)} s a day ${off > 0 ? 'faster' : 'slower'} than stated`
      return `Balance and hairspring together beat ${figure(help.beatRateVph, 1)} an hour, ${stated}.`
    }
  }
}

const partNames: Readonly<Record<RegulatedPart, string>> = {
  inertia: 'inertia of the balance',
  stiffness: 'stiffness of the hairspring',
  length: 'active length of the hairspring',
}

/** By how much one part must change to take a gain out. */
export const changeSentence = ({ part, percent }: { readonly part: RegulatedPart; readonly percent: number }): string =>
  `${figure(Math.abs(percent), 3)} % ${percent > 0 ? 'more' : 'less'} ${partNames[part]}`
