import { describe, expect, it } from 'vitest'
import { benchTrain } from '../../../core/bench/bench-train.ts'
import type { CaliberValues } from '../../../core/record/caliber.ts'
import { caliberPrinted } from '../../support/caliber-printed.ts'

const watch: CaliberValues = {
  beatRateVph: 18000,
  secondsDisplay: 'small',
  centreWheel: 80,
  thirdPinion: 10,
  thirdWheel: 75,
  fourthPinion: 10,
  fourthWheel: 80,
  escapePinion: 8,
  escapeTeeth: 15,
}
const trainOf = (values: CaliberValues, counted = {}) => benchTrain({ values, readings: {} }, counted)

describe('the rate of a train on the bench', () => {
  it('is exact, with the seconds hand and the working', () => {
    const rate = trainOf(watch).rateOf(watch)
    expect(rate?.vph.toFraction()).toBe('18000')
    expect(rate?.secondsTurns?.toFraction()).toBe('60')
    expect(rate?.working).toEqual({
      formula: '80/10 × 75/10 × 80/8 × 2 × 15',
      where: {
        centreWheel: 80,
        thirdPinion: 10,
        thirdWheel: 75,
        fourthPinion: 10,
        fourthWheel: 80,
        escapePinion: 8,
        escapeTeeth: 15,
      },
      gives: 18000,
    })
  })

  it('names the counts that the rate follows from in the order of the power flow', () => {
    expect(trainOf(watch).keys).toEqual([
      'centreWheel',
      'thirdPinion',
      'thirdWheel',
      'fourthPinion',
      'fourthWheel',
      'escapePinion',
      'escapeTeeth',
    ])
    const fifth = { ...watch, fifthPinion: 10, fifthWheel: 60 }
    expect(trainOf(fifth).keys).toContain('fifthWheel')
  })

  it('is none while a count is missing, and no seconds hand is no witness', () => {
    const { escapeTeeth: _, ...noEscape } = watch
    expect(trainOf(watch).rateOf(noEscape)).toBeNull()
    const { thirdWheel: __, ...noThird } = watch
    expect(trainOf(watch).rateOf(noThird)).toBeNull()
    const noHand: CaliberValues = { ...watch, secondsDisplay: 'none' }
    expect(trainOf(noHand).rateOf(noHand)?.secondsTurns).toBeNull()
    const { secondsDisplay: ___, ...unsaid } = watch
    expect(trainOf(unsaid).rateOf(unsaid)?.secondsTurns).toBeNull()
  })

  it('takes a centre arbor that turns once in several hours into account, exactly as printed', () => {
    const { values, readings } = caliberPrinted({
      beatRateVph: '9 100',
      hoursPerCentreTurn: '3',
      secondsDisplay: 'small',
      centreWheel: '78',
      thirdPinion: '6',
      thirdWheel: '60',
      fourthPinion: '6',
      fourthWheel: '42',
      escapePinion: '6',
      escapeTeeth: '15',
    })
    const rate = benchTrain({ values, readings }, {}).rateOf(values)
    expect(rate?.vph.toFraction()).toBe('9100')
    expect(rate?.working.formula).toBe('78/6 × 60/6 × 42/6 × 2 × 15 ÷ 3')
    expect(rate?.working.where.hoursPerCentreTurn).toBe(3)
    expect(rate?.secondsTurns?.toFraction(true)).toBe('43 1/3')
  })

  it('follows an indirect seconds hand through its own pair', () => {
    const sweep: CaliberValues = { ...watch, secondsDisplay: 'centre-indirect', sweepDriver: 75, sweepPinion: 10 }
    expect(trainOf(sweep).rateOf(sweep)?.secondsTurns?.toFraction()).toBe('60')
    const { sweepPinion: _, ...half } = sweep
    expect(trainOf(half).rateOf(half)?.secondsTurns).toBeNull()
    expect(trainOf(half).rateOf(half)?.vph.toFraction()).toBe('18000')
  })

  it('learns of an arbor from what was counted where the specification is silent', () => {
    const { fourthPinion: _, fourthWheel: __, ...gap } = watch
    const counted = { fourthPinion: 10, fourthWheel: 80 }
    expect(
      trainOf(gap, counted)
        .rateOf({ ...gap, ...counted })
        ?.vph.toFraction(),
    ).toBe('18000')
  })

  it('leaves the fourth arbor out where the specified rate follows without it', () => {
    const clock: CaliberValues = {
      beatRateVph: 3600,
      secondsDisplay: 'small',
      centreWheel: 64,
      thirdPinion: 8,
      thirdWheel: 60,
      escapePinion: 8,
      escapeTeeth: 30,
    }
    const foreign = { ...clock, thirdWheel: 62 }
    const rate = trainOf(clock, { thirdWheel: 62 }).rateOf(foreign)
    expect(rate?.vph.toFraction()).toBe('3720')
    expect(rate?.secondsTurns?.toFraction()).toBe('62')
  })
})
