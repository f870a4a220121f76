import { describe, expect, it } from 'vitest'
import { secondsHandTurnsOnceAMinute } from '../../core/proofs/seconds-hand-turns-once-a-minute.ts'
import type { CaliberValues } from '../../core/record/caliber.ts'
import { printed } from '../support/printed.ts'
import { entered, judged, turnsOf } from '../support/printed-train.ts'
import { derham, encyclopaedia1810, encyclopaedia1911, goodrich } from './sources.ts'

describe('turns of the fourth arbor in an hour', () => {
  const rows: readonly [turns: string, chain: string, source: string][] = [
    ['60', '60/8 64/8', `${encyclopaedia1810}, Pearson; A`],
    ['60', '60/10 60/6', `${encyclopaedia1810}, “Clock”; A`],
    ['60', '48/6 45/6', `${derham}, p. 121; A`],
    ['60', '64/8 60/8', `${derham}, p. 30; A`],
    ['60', '80/10 75/10', `${goodrich}, p. 265; A`],
    ['60', '112/14 105/14', `${goodrich}, table, row 112 × 105; A`],
    ['64', '48/6 48/6', `${goodrich}, p. 192, no seconds hand; A`],
    ['72', '54/6 48/6', `${encyclopaedia1810}, ex. 1, and ${derham}, p. 122, no seconds hand; A`],
    ['78', '54/6 52/6', `${encyclopaedia1810}, ex. 3, no seconds hand; A`],
  ]
  it.each(rows)('%s with %s (%s)', (turns, chain) => {
    expect(turnsOf(chain).toFraction()).toBe(turns)
    const values = entered(`${chain} 80/8`, 15)
    const judgement = judged(secondsHandTurnsOnceAMinute, { ...values, secondsDisplay: 'small' })
    expect(judgement).toMatchObject({ outcome: turns === '60' ? 'agrees' : 'disagrees', found: printed(turns) })
    // A train without a seconds hand may turn its fourth arbor as it likes.
    const none: CaliberValues = { ...values, secondsDisplay: 'none' }
    expect(secondsHandTurnsOnceAMinute.appliesTo?.(none, {})).toBe(false)
  })
})

it(`60 on the escape arbor of a clock with a seconds pendulum: 64/8 and 60/8, E 30 (${encyclopaedia1911}, p. 537; A)`, () => {
  const values = { ...entered('64/8 60/8', 30), beatRateVph: 3600, secondsDisplay: 'small' } as const
  expect(judged(secondsHandTurnsOnceAMinute, values)).toMatchObject({
    outcome: 'agrees',
    details: { arbor: 'escape' },
  })
})

it(`20 from the hour arbor, 120/6: a ring of 180 marks in 3 minutes (${encyclopaedia1810}, “Clock”, Ferguson’s; A)`, () => {
  expect(turnsOf('120/6').toFraction()).toBe('20')
  expect((60 / printed('20')) * 60).toBe(printed('180'))
})

describe('indirect centre seconds, driven from the third arbor (constructed; D)', () => {
  it.each([
    [{ centreWheel: 80, thirdPinion: 10, sweepDriver: 75, sweepPinion: 10 }, 'agrees'],
    [{ centreWheel: 64, thirdPinion: 8, sweepDriver: 60, sweepPinion: 8 }, 'agrees'],
    [{ centreWheel: 80, thirdPinion: 10, sweepDriver: 80, sweepPinion: 10 }, 'disagrees'],
  ] as const)('%o: %s', (counts, outcome) => {
    const values: CaliberValues = { ...counts, secondsDisplay: 'centre-indirect' }
    expect(judged(secondsHandTurnsOnceAMinute, values).outcome).toBe(outcome)
  })
})
