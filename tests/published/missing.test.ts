import { describe, expect, it } from 'vitest'
import { beatRate } from '../../core/formulas/beat-rate.ts'
import { centreDistance } from '../../core/formulas/centre-distance.ts'
import type { CaliberValues } from '../../core/record/caliber.ts'
import type { CountKey } from '../../core/trains/cuttable-counts.ts'
import { findMissingCounts } from '../../core/trains/missing-counts.ts'
import { caliberOf } from '../support/caliber-of.ts'

/*
 * Grades: A, the text was read and the figure computed again; B, read in an excerpt or at second hand; D, constructed:
 * certain arithmetic with nothing to cite.
 */
const goodrich = 'W. L. Goodrich, The Modern Clock, 1905'
const playtner = 'H. R. Playtner, An Analysis of the Lever Escapement, 1910'
const derham = 'W. Derham, The Artificial Clock-maker, 1696'
const dietzschold = 'C. Dietzschold, Die Turmuhren (year from memory, 1894)'

const find = (values: CaliberValues, unknown?: readonly CountKey[]) => findMissingCounts(caliberOf(values), unknown)
const countsOf = (answer: ReturnType<typeof find>) => answer.solutions.map(({ counts }) => counts)

describe('missing wheel or pinion in print', () => {
  it(`M1: 5 400 with 30 teeth, pinions of 8 and a third wheel of 72 want a centre wheel of 80 (${goodrich}, p. 259; A)`, () => {
    const values = { beatRateVph: 5400, escapeTeeth: 30, thirdPinion: 8, thirdWheel: 72, escapePinion: 8 }
    for (const answer of [find(values), find(values, ['centreWheel'])]) {
      expect(answer).toMatchObject({ unknown: ['centreWheel'], complete: true })
      expect(countsOf(answer)).toEqual([{ centreWheel: 80 }])
    }
  })

  it(`M2: a pinion of 12 at 7 1/2 to one wants a wheel of 90, 8 1/2 parts apart (${goodrich}, p. 201; A)`, () => {
    // The first pair is 8 to one, so that 7 1/2 to one is left to the seconds arbor.
    const values = { secondsDisplay: 'small', centreWheel: 80, thirdPinion: 10, fourthPinion: 12 } as const
    expect(countsOf(find(values, ['thirdWheel']))).toEqual([{ thirdWheel: 90 }])
    // With a pinion of pitch radius 1, that is a module of 2/12.
    expect(centreDistance(2 / 12, 90, 12)).toBeCloseTo(8.5, 9)
  })

  it(`M3: 300 a minute with 16 teeth and the fourth once a minute want 75 on 8 (${playtner}, p. 7; A)`, () => {
    const values = { beatRateVph: 18000, escapeTeeth: 16, secondsDisplay: 'small' } as const
    const answer = find(values, ['fourthWheel', 'escapePinion'])
    expect(countsOf(answer)[0]).toEqual({ fourthWheel: 75, escapePinion: 8 })
    // Only 8 leaves among the usual ones: any other is remarked on.
    const usual = answer.solutions.filter(({ remarks }) => remarks.every(({ code }) => !code.startsWith('un')))
    expect(usual.map(({ counts }) => counts.escapePinion)).toEqual([8])
    for (const escapePinion of [6, 7, 10, 12]) {
      const none = find({ ...values, escapePinion }, ['fourthWheel'])
      expect(none.solutions).toEqual([])
      expect(none.nearest.length).toBeGreaterThan(0)
    }
  })

  it(`M5: 2 100 with 84 pins wants 25/2 to one: 125 on 10 or 100 on 8 (${dietzschold}, p. 205; B)`, () => {
    // The one pair of the print stands as the second of two, the first being one to one.
    const values = { beatRateVph: 2100, escapeTeeth: 84, centreWheel: 60, thirdPinion: 60 }
    expect(countsOf(find({ ...values, escapePinion: 10 }, ['thirdWheel']))).toEqual([{ thirdWheel: 125 }])
    expect(countsOf(find({ ...values, escapePinion: 8 }, ['thirdWheel']))).toEqual([{ thirdWheel: 100 }])
    const both = countsOf(find(values, ['thirdWheel', 'escapePinion']))
    expect(both).toContainEqual({ thirdWheel: 125, escapePinion: 10 })
    expect(both).toContainEqual({ thirdWheel: 100, escapePinion: 8 })
  })

  it(`M7: 96 on 6 kept at 16 to one with a pinion of 5 wants 80 (${derham}, p. 123; A)`, () => {
    // The pair alone is printed; the rest of the train is constructed round it.
    const rate = beatRate([96, 48], [6, 6], 15).valueOf()
    const values = { beatRateVph: rate, thirdPinion: 5, thirdWheel: 48, escapePinion: 6, escapeTeeth: 15 }
    expect(countsOf(find(values, ['centreWheel']))).toEqual([{ centreWheel: 80 }])
  })

  it(`M9: centre 84, third 70, 30 teeth and pinions of 7 give 120 a minute, and it gives them (${goodrich}, p. 257; A)`, () => {
    expect(beatRate([84, 70], [7, 7], 30).valueOf()).toBe(120 * 60)
    const values = { beatRateVph: 7200, centreWheel: 84, thirdPinion: 7, escapePinion: 7, escapeTeeth: 30 }
    expect(countsOf(find(values))).toEqual([{ thirdWheel: 70 }])
  })
})

describe('missing counts of constructed trains, the fourth once a minute (D)', () => {
  const ten = { centreWheel: 80, thirdPinion: 10, thirdWheel: 75, fourthPinion: 10 }
  const eight = { centreWheel: 64, thirdPinion: 8, thirdWheel: 60, fourthPinion: 8 }
  const rows: readonly [string, CaliberValues, Partial<Record<CountKey, number>>][] = [
    ['M20', { beatRateVph: 18000, ...ten, fourthWheel: 80, escapePinion: 8, escapeTeeth: 15 }, { thirdWheel: 75 }],
    ['M21', { beatRateVph: 18000, ...eight, fourthWheel: 70, escapePinion: 7, escapeTeeth: 15 }, { fourthPinion: 8 }],
    ['M23', { beatRateVph: 19800, ...eight, fourthWheel: 88, escapePinion: 8, escapeTeeth: 15 }, { fourthWheel: 88 }],
    ['M26', { beatRateVph: 28800, ...ten, fourthWheel: 84, escapePinion: 7, escapeTeeth: 20 }, { escapePinion: 7 }],
    ['M27', { beatRateVph: 18000, ...ten, fourthWheel: 80, escapePinion: 8, escapeTeeth: 15 }, { escapeTeeth: 15 }],
  ]
  it.each(rows)('%s', (_id, whole, expected) => {
    const [key] = Object.keys(expected) as CountKey[]
    const { [key as CountKey]: _, ...rest } = whole
    for (const secondsDisplay of ['small', 'none'] as const) {
      const answer = find({ ...rest, secondsDisplay })
      expect(answer).toMatchObject({ unknown: [key], complete: true, nearest: [] })
      expect(countsOf(answer)).toEqual([expected])
      expect(answer.solutions[0]?.remarks).toEqual([])
    }
  })

  it('M25: 18 000 with 16 teeth and an escape pinion of 7 would want 65.625: none, and the nearest are told', () => {
    const answer = find({ beatRateVph: 18000, ...eight, escapePinion: 7, escapeTeeth: 16, secondsDisplay: 'small' })
    expect(answer).toMatchObject({ unknown: ['fourthWheel'], solutions: [], complete: true })
    expect(answer.nearest.map(({ counts }) => counts.fourthWheel)).toEqual([66, 65])
    // 86 400 × (66 / 65.625 − 1) and the same of 65.
    expect(answer.nearest[0]?.rateErrorSecondsPerDay).toBeCloseTo(493.714, 3)
    expect(answer.nearest[1]?.rateErrorSecondsPerDay).toBeCloseTo(-822.857, 3)
  })
})

describe('motion works in print, each with one count lost', () => {
  const works: readonly [string, number, number, number, number, string][] = [
    ['W1', 10, 40, 12, 36, 'Encyclopaedia Britannica, 4th ed., 1810; A'],
    ['W2', 12, 36, 10, 40, `${goodrich}, p. 293; A`],
    ['W3', 12, 48, 12, 36, `${derham}, pp. 121–122; A`],
    ['W4', 14, 42, 12, 48, 'E. Beckett, A Rudimentary Treatise on Clocks, 8th ed., 1903, p. 297; A'],
    ['W6', 48, 48, 6, 72, `${derham}, pp. 110–111; A`],
    ['W7', 30, 30, 6, 72, 'Encyclopaedia Britannica, 4th ed., 1810, “Clock”; A'],
    ['W8', 30, 30, 7, 84, `${goodrich}, p. 295; A`],
  ]
  it.each(works)('%s', (_id, cannonPinion, minuteWheel, minutePinion, hourWheel, _source) => {
    const work = { cannonPinion, minuteWheel, minutePinion, hourWheel }
    for (const key of Object.keys(work) as (keyof typeof work)[])
      expect(countsOf(find(work, [key]))).toEqual([{ [key]: work[key] }])
  })
})
