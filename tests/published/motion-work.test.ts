import Fraction from 'fraction.js'
import { describe, expect, it } from 'vitest'
import { gearRatio } from '../../core/formulas/gear-ratio.ts'
import { hourHandFollowsMinuteHand } from '../../core/proofs/hour-hand-follows-minute-hand.ts'
import { judged } from '../support/printed-train.ts'
import { beckett, derham, dietzschold, encyclopaedia1810, goodrich } from './sources.ts'

describe('published motion work turns the hour hand once in twelve turns of the minute hand', () => {
  type Row = readonly [id: string, cannon: number, minuteWheel: number, minute: number, hour: number, source: string]
  const rows: readonly Row[] = [
    ['W1', 10, 40, 12, 36, `${encyclopaedia1810}, “Science, Amusements of”, ex. 1, and “Clock”, fig. 14; A`],
    ['W2', 12, 36, 10, 40, `${goodrich}, p. 293; A`],
    ['W3', 12, 48, 12, 36, `${derham}, pp. 121–122; A`],
    ['W4', 14, 42, 12, 48, `${beckett}, p. 297, which does not say what goes with what; A`],
    ['W4 paired the other way', 12, 42, 14, 48, `${beckett}, p. 297; A`],
    ['W5', 18, 54, 14, 56, 'counts noted without their place in print; D'],
    ['W6', 48, 48, 6, 72, `${derham}, pp. 110–111; A`],
    ['W7', 30, 30, 6, 72, `${encyclopaedia1810}, “Clock”; A`],
    ['W8', 30, 30, 6, 72, `${goodrich}, p. 295, an equal pair (its count is ours); A`],
    ['W8', 30, 30, 7, 84, `${goodrich}, p. 295, an equal pair (its count is ours); A`],
    ['W10', 40, 40, 6, 72, `${dietzschold}, p. 208, an equal pair and then 1 to 12 (counts are ours); B`],
  ]
  it.each(rows)('%s: %i to %i, %i to %i (%s)', (_id, cannonPinion, minuteWheel, minutePinion, hourWheel) => {
    const judgement = judged(hourHandFollowsMinuteHand, { cannonPinion, minuteWheel, minutePinion, hourWheel })
    expect(judgement).toMatchObject({ outcome: 'agrees', found: 12, difference: 0 })
  })
})

it.each([
  [12, 36, 10, 38, 11.4],
  [12, 30, 8, 40, 12.5],
])('%i to %i with %i to %i gives %d and is refused (constructed; D)', (...row) => {
  const [cannonPinion, minuteWheel, minutePinion, hourWheel, found] = row
  const judgement = judged(hourHandFollowsMinuteHand, { cannonPinion, minuteWheel, minutePinion, hourWheel })
  expect(judgement).toMatchObject({ outcome: 'disagrees', found })
})

// Two kinds for which the library has no fields: only their sums are held here, in the same exact fractions.
describe('motion work of other kinds', () => {
  it(`W11: an epicyclic of fixed 33, idlers 40 and hour wheel 36 turns by 1 − 33/36 = 1/12 (${dietzschold}, p. 289; B)`, () => {
    expect(new Fraction(1).sub(gearRatio([33, 40], [40, 36])).toFraction()).toBe('1/12')
  })

  it(`W12: a cuckoo clock’s arbor of 1 1/2 h drives 48 to 32 and 8 to 64, 12 between the hands (${goodrich}, p. 296; A)`, () => {
    const minute = gearRatio([48], [32])
    const hour = gearRatio([8], [64])
    expect(new Fraction('3/2').div(minute).toFraction()).toBe('1')
    expect(new Fraction('3/2').div(hour).toFraction()).toBe('12')
    expect(minute.div(hour).toFraction()).toBe('12')
  })
})
