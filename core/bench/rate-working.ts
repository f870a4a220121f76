import { rateForms } from '../formulas/rate-forms.ts'
import type { WorkingStep } from '../proofs/proof.ts'
import { onPaper } from '../quantities/on-paper.ts'

/** A form of a beat rate with its name and the sum that gives it. */
export interface RateLine {
  readonly form: 'hertz' | 'beats-a-second' | 'beats-a-minute' | 'vibration' | 'oscillation'
  readonly working: WorkingStep
}

/** The forms of a beat rate, each with its working. */
export const rateWorking = (beatRateVph: number): readonly RateLine[] => {
  const { hertz, beatsPerSecond, beatsPerMinute, vibrationMs, oscillationMs } = rateForms(beatRateVph)
  const line = (form: RateLine['form'], formula: string, value: number, unit: string): RateLine => ({
    form,
    working: { formula, where: { beatRateVph }, gives: `${onPaper(value)} ${unit}` },
  })
  return [
    line('hertz', `${beatRateVph} ÷ 7200`, hertz, 'Hz'),
    line('beats-a-second', `${beatRateVph} ÷ 3600`, beatsPerSecond, 'a second'),
    line('beats-a-minute', `${beatRateVph} ÷ 60`, beatsPerMinute, 'a minute'),
    line('vibration', `3600 s ÷ ${beatRateVph}`, vibrationMs, 'ms'),
    line('oscillation', `7200 s ÷ ${beatRateVph}`, oscillationMs, 'ms'),
  ]
}
