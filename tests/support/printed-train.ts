import Fraction from 'fraction.js'
import { beatRate } from '../../core/formulas/beat-rate.ts'
import { gearRatio } from '../../core/formulas/gear-ratio.ts'
import type { Judgement, Proof } from '../../core/proofs/proof.ts'
import { judgeProof } from '../../core/proofs/prove.ts'
import type { CaliberValues } from '../../core/record/caliber.ts'
import { caliberOf } from './caliber-of.ts'

type Pair = readonly [wheel: number, pinion: number]

/** A chain of pairs as written, wheel over pinion: `80/10 75/10`. */
const pairsOf = (chain: string): readonly Pair[] =>
  chain.split(' ').map((pair) => {
    const [wheel, pinion] = pair.split('/').map(Number)
    return [wheel ?? 0, pinion ?? 0]
  })

const wheels = (chain: string) => pairsOf(chain).map(([wheel]) => wheel)
const pinions = (chain: string) => pairsOf(chain).map(([, pinion]) => pinion)

/** Vibrations an hour of a written chain; the hours of the first wheel’s turn as a fraction, `4/3`. */
export const rateOf = (chain: string, escapeTeeth: number, hoursPerFirstTurn?: string): Fraction =>
  beatRate(
    wheels(chain),
    pinions(chain),
    escapeTeeth,
    hoursPerFirstTurn === undefined ? undefined : new Fraction(hoursPerFirstTurn),
  )

/** Turns of the last arbor of a written chain for one of the first. */
export const turnsOf = (chain: string): Fraction => gearRatio(wheels(chain), pinions(chain))

/** A written chain entered from the centre wheel on, as a person would; two pairs are a train without a fourth arbor. */
export const entered = (chain: string, escapeTeeth: number): CaliberValues => {
  const [centre, third, fourth, fifth] = pairsOf(chain)
  const last = pairsOf(chain).at(-1)
  return {
    ...(centre && { centreWheel: centre[0] }),
    ...(third && { thirdPinion: centre?.[1] ?? 0, thirdWheel: third[0] }),
    ...(fourth && { fourthPinion: third?.[1] ?? 0, fourthWheel: fourth[0] }),
    ...(fifth && { fifthPinion: fourth?.[1] ?? 0, fifthWheel: fifth[0] }),
    ...(last && { escapePinion: last[1] }),
    escapeTeeth,
  }
}

/** What a proof finds of these values alone. */
export const judged = (proof: Proof, values: CaliberValues): Judgement => judgeProof(proof, caliberOf(values))
