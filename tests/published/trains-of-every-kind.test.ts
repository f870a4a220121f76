import Fraction from 'fraction.js'
import { expect, it } from 'vitest'
import { proveCaliber } from '../../core/proofs/prove.ts'
import type { CaliberValues } from '../../core/record/caliber.ts'
import { proofReports } from '../../core/wording/proof-report.ts'
import { workingLine } from '../../core/wording/working-line.ts'
import { caliberOf } from '../support/caliber-of.ts'
import { entered } from '../support/printed-train.ts'
import { derham, encyclopaedia1810 } from './sources.ts'

const outcomeOf = (values: CaliberValues): Readonly<Record<string, string>> =>
  Object.fromEntries(proveCaliber(caliberOf(values)).map(({ proof, judgement }) => [proof.id, judgement.outcome]))

/** All that is wrong or doubtful under every proof. */
const objections = (values: CaliberValues): readonly string[] =>
  proveCaliber(caliberOf(values))
    .filter(({ judgement }) => judgement.outcome !== 'agrees' && judgement.outcome !== 'cannot-check')
    .map(({ proof, judgement }) => `${proof.id} ${judgement.outcome}`)

const usual = '80/10 75/10 80/8'

it.each<[chain: string, teeth: number, hours: string, rate: number, source: string]>([
  ['55/5 45/5 40/5', 17, '4/3', 20196, `T12, ${derham}, pp. 19–25; A`],
  ['55/5 45/5 40/5', 17, '12/7', 15708, `T14, ${derham}, p. 26; A`],
  ['66/6 60/6 50/5 45/5', 19, '24', 15675, `T15, ${derham}, p. 122 sect. 2; A`],
  ['63/7 42/6 36/6 32/6', 15, '4', 15120, `T17, ${derham}, p. 123 sect. 5; A`],
  ['56/7 54/6', 19, '1', 2736, `T19, ${derham}, pp. 62 and 110; A`],
  ['78/6 60/6 42/6', 15, '3', 9100, `T19b, ${derham}, p. 115 sect. 8; A`],
])('an old train %s, E%d, once in %s h, is right under every proof (%d: %s)', (chain, teeth, hours, rate) => {
  const hoursPerCentreTurn = new Fraction(hours).valueOf()
  const values = { ...entered(chain, teeth), hoursPerCentreTurn, beatRateVph: rate, secondsDisplay: 'none' } as const
  expect(objections(values)).toEqual([])
  expect(outcomeOf(values)).toMatchObject({ 'beat-rate-follows-train': 'agrees', 'rate-is-customary': 'agrees' })
})

it(`a rate that only the counts give is no more than doubtful (T16, 9973 1/3, ${derham}, pp. 26–29; A)`, () => {
  const values = { ...entered('60/6 48/6 40/5 33/5', 17), hoursPerCentreTurn: 14.4, beatRateVph: 9973 }
  expect(objections(values)).toEqual(['rate-is-customary doubtful'])
})

it.each([
  ['72', '54/6 48/6 48/6', 15, 17280],
  ['78', '54/6 52/6 52/6', 13, 17576],
])(
  `a fourth arbor that turns %s times an hour is right where no seconds hand is stated (${encyclopaedia1810}, ex. 1 and 3; A)`,
  (turns, chain, teeth, beatRateVph) => {
    const values = { ...entered(chain, teeth), beatRateVph, secondsDisplay: 'none' } as const
    expect(objections(values)).toEqual([])
    const [rate] = proofReports(caliberOf(values))
    expect(rate?.working.map(workingLine)).toContain(
      `fourth arbor: 9 × ${chain.split(' ')[1]} = ${turns} turns an hour`,
    )
    expect(objections({ ...values, secondsDisplay: 'small' })).toEqual(['seconds-hand-turns-once-a-minute disagrees'])
  },
)

// Constructed, grade D: certain arithmetic with nothing to cite.
it.each<[kind: string, values: CaliberValues]>([
  [
    'an intermediate wheel, eight days',
    { intermediatePinion: 12, intermediateWheel: 72, barrelTeeth: 96, centrePinion: 12 },
  ],
  ['a fifth wheel', { fourthWheel: 60, fifthPinion: 12, fifthWheel: 20, escapePinion: 10 }],
  ['indirect centre seconds', { secondsDisplay: 'centre-indirect', sweepDriver: 75, sweepPinion: 10 }],
  ['a dial of 24 hours', { dialHours: '24', cannonPinion: 10, minuteWheel: 40, minutePinion: 10, hourWheel: 60 }],
])('a train with %s is right under every proof', (_kind, own) => {
  const values = { ...entered(usual, 15), beatRateVph: 18000, secondsDisplay: 'small', ...own } as const
  expect(objections(values)).toEqual([])
})

it('tells the exact rate, and the difference in vibrations and in seconds a day', () => {
  const [rate] = proofReports(caliberOf({ ...entered(usual, 15), thirdWheel: 74, beatRateVph: 18000 }))
  expect(rate).toMatchObject({ stated: 18000, found: 17760, difference: -240 })
  expect(rate?.message).toContain('240 less (1152 s a day)')
})
