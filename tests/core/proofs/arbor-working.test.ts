import Fraction from 'fraction.js'
import { expect, it } from 'vitest'
import { arborWorking } from '../../../core/proofs/arbor-working.ts'
import type { CaliberValues } from '../../../core/record/caliber.ts'
import { workingLine } from '../../../core/wording/working-line.ts'

const train: CaliberValues = {
  barrelTeeth: 80,
  centrePinion: 10,
  centreWheel: 80,
  thirdPinion: 10,
  thirdWheel: 75,
  fourthPinion: 10,
  fourthWheel: 80,
  escapePinion: 8,
  escapeTeeth: 15,
}
const lines = (values: CaliberValues, hours?: Fraction) => arborWorking(values, hours).map(workingLine)

it('turns every arbor from the centre outwards', () => {
  expect(lines(train)).toEqual([
    'barrel: 1 ÷ 80/10 = 0.125 turn an hour',
    'centre arbor = 1 turn an hour',
    'third arbor: 80/10 = 8 turns an hour',
    'fourth arbor: 8 × 75/10 = 60 turns an hour',
    'escape arbor: 60 × 80/8 = 600 turns an hour',
  ])
})

it('counts the hours of a centre turn, an intermediate and a fifth arbor, and a sweep pinion', () => {
  const values: CaliberValues = {
    ...train,
    intermediatePinion: 10,
    intermediateWheel: 60,
    fourthWheel: 64,
    fifthPinion: 8,
    fifthWheel: 60,
    escapePinion: 6,
    sweepDriver: 75,
    sweepPinion: 10,
  }
  expect(lines(values, new Fraction(4, 3))).toEqual([
    'barrel: 0.125 ÷ 80/10 = 1/64 turn an hour',
    'intermediate arbor: 0.75 ÷ 60/10 = 0.125 turn an hour',
    'centre arbor: 1 ÷ 1 1/3 = 0.75 turn an hour',
    'third arbor: 0.75 × 80/10 = 6 turns an hour',
    'fourth arbor: 6 × 75/10 = 45 turns an hour',
    'fifth arbor: 45 × 64/8 = 360 turns an hour',
    'escape arbor: 360 × 60/6 = 3600 turns an hour',
    'sweep seconds arbor: 6 × 75/10 = 45 turns an hour',
  ])
})

it('goes as far as the counts are stated', () => {
  expect(lines({ centreWheel: 80, thirdPinion: 10, thirdWheel: 75 })).toEqual([
    'centre arbor = 1 turn an hour',
    'third arbor: 80/10 = 8 turns an hour',
  ])
})

it('writes turns that no decimal holds as a whole number and a fraction', () => {
  // Centre 54, third 6 and 52, fourth 7: the seconds hand of a watch that went wrong, at 66 6/7 turns.
  expect(lines({ centreWheel: 54, thirdPinion: 6, thirdWheel: 52, fourthPinion: 7 })).toContain(
    'fourth arbor: 9 × 52/7 = 66 6/7 turns an hour',
  )
})
