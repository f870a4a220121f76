import { describe, expect, it } from 'vitest'
import { dailyDifference } from '../../core/formulas/daily-difference.ts'
import { rateForms, vibrationsPerHour } from '../../core/formulas/rate-forms.ts'
import { beatRateFollowsTrain } from '../../core/proofs/beat-rate-follows-train.ts'
import { secondsHandTurnsOnceAMinute } from '../../core/proofs/seconds-hand-turns-once-a-minute.ts'
import { expectAsPrinted, printed } from '../support/printed.ts'
import { entered, judged, rateOf, turnsOf } from '../support/printed-train.ts'
import { goodrichClockTrains } from './goodrich-clock-trains.ts'
import {
  beckett,
  cunynghame,
  derham,
  dietzschold,
  encyclopaedia1810,
  encyclopaedia1911,
  goodrich,
  playtner,
} from './sources.ts'

const amusements = `${encyclopaedia1810}, “Science, Amusements of”`

describe('watch trains give their published rate', () => {
  type Row = readonly [id: string, chain: string, escape: number, rate: string, fourth: string, source: string]
  const rows: readonly Row[] = [
    ['T1', '54/6 48/6 48/6', 15, '17,280', '72', `${amusements}, ex. 1, after Emerson; A`],
    ['T3', '54/6 52/6 52/6', 13, '17,576', '78', `${amusements}, ex. 3; A`],
    ['T5', '60/8 64/8 48/6', 15, '14,400', '60', `${amusements}, Pearson’s numbers; A`],
    ['T6', '60/10 60/6 48/6', 15, '14,400', '60', `${encyclopaedia1810}, “Clock”; A`],
    ['T9, no rate printed', '54/6 48/6 45/6', 15, '16,200', '72', `${derham}, p. 122 sect. 4; A`],
    ['T10', '48/6 45/6 42/6', 19, '15,960', '60', `${derham}, p. 121 sect. 1; A`],
    ['T21b', '64/8 60/8 40/8', 15, '9,000', '60', `${derham}, p. 116 sect. 9; A`],
    ['T21b', '48/6 45/6 30/6', 15, '9,000', '60', `${derham}, p. 116 sect. 10; A`],
  ]
  it.each(rows)('%s: %s with %i escape teeth is %s, the fourth arbor %s an hour (%s)', (...row) => {
    const [, chain, escapeTeeth, rate, fourth] = row
    const exact = rateOf(chain, escapeTeeth)
    expect(exact.toFraction()).toBe(String(printed(rate)))
    expect(turnsOf(chain.split(' ').slice(0, 2).join(' ')).toFraction()).toBe(fourth)
    const values = { ...entered(chain, escapeTeeth), beatRateVph: printed(rate) }
    expect(judged(beatRateFollowsTrain, values)).toMatchObject({ outcome: 'agrees', difference: 0 })
    const seconds = judged(secondsHandTurnsOnceAMinute, { ...values, secondsDisplay: 'small' })
    expect(seconds.outcome).toBe(fourth === '60' ? 'agrees' : 'disagrees')
  })

  it(`T3, T5, T6: 4.882 and exactly 4 beats a second (${amusements}; A)`, () => {
    expectAsPrinted(rateForms(rateOf('54/6 52/6 52/6', 13).valueOf()).beatsPerSecond, '4.882')
    expect(rateForms(rateOf('60/8 64/8 48/6', 15).valueOf()).beatsPerSecond).toBe(4)
    expect(rateForms(rateOf('60/10 60/6 48/6', 15).valueOf()).beatsPerSecond).toBe(4)
  })

  it(`T7: 7,200 whole vibrations, 120 a minute, are 14,400 (${goodrich}, p. 192; A)`, () => {
    const rate = rateOf('48/6 48/6 45/6', 15)
    expect(rate.toFraction()).toBe('14400')
    expect(vibrationsPerHour(printed('7,200') / 3600)).toBe(rate.valueOf())
    expect(rateForms(rate.valueOf()).hertz * 60).toBe(printed('120'))
  })

  it(`T8: the last pair alone, with the fourth once a minute, is 300 a minute (${playtner}, p. 7; A)`, () => {
    const rate = rateOf('60/1 75/8', 16)
    expect(rate.toFraction()).toBe('18000')
    expect(rateForms(rate.valueOf()).beatsPerMinute).toBe(printed('300'))
  })

  it(`T11: the half train of 4,500 is 9,000 (${derham}, p. 30; A)`, () => {
    expect(rateOf('64/8 60/8 40/8', 15).toFraction()).toBe(String(2 * printed('4,500')))
  })

  it(`T11b: 80/10 and 75/10 turn the seconds arbor 60 times (${goodrich}, p. 265; A)`, () => {
    expect(turnsOf('80/10 75/10').toFraction()).toBe('60')
  })
})

describe('trains with no wheel that turns once an hour give their published rate', () => {
  type Row = readonly [
    id: string,
    chain: string,
    escape: number,
    dial: string,
    beatsInATurn: string,
    rate: string,
    source: string,
  ]
  const rows: readonly Row[] = [
    ['T12', '55/5 45/5 40/5', 17, '36/4', '26,928', '20,196', `${derham}, pp. 19–25; A`],
    ['T14', '55/5 45/5 40/5', 17, '28/4', '26,928', '15,708', `${derham}, p. 26; A`],
    ['T15', '66/6 60/6 50/5 45/5', 19, '10/20', '376,200', '15,675', `${derham}, p. 122 sect. 2; A`],
    ['T16', '60/6 48/6 40/5 33/5', 17, '20/24', '143,616', '9,973 1/3', `${derham}, pp. 26–29, with 20/24 cut; A`],
    ['T17', '63/7 42/6 36/6 32/6', 15, '30/10', '60,480', '15,120', `${derham}, p. 123 sect. 5, no rate printed; A`],
    ['T19b', '78/6 60/6 42/6', 15, '48/12', '27,300', '9,100', `${derham}, p. 115 sect. 8; A`],
  ]
  it.each(rows)('%s: %s, %i, dial %s: %s in a turn of the great wheel, %s an hour (%s)', (...row) => {
    const [, chain, escapeTeeth, dial, beatsInATurn, rate] = row
    // The dial wheel turns once in 12 hours, the great wheel dial/pinion times as often.
    const hours = turnsOf(dial).inverse().mul(12)
    expect(rateOf(chain, escapeTeeth).toFraction()).toBe(String(printed(beatsInATurn)))
    const exact = rateOf(chain, escapeTeeth, hours.toFraction())
    expectAsPrinted(exact.valueOf(), rate)
    // The great wheel stands for the centre wheel; the hours come as a plain number, as from a file.
    const values = { ...entered(chain, escapeTeeth), hoursPerCentreTurn: hours.valueOf() }
    expect(judged(beatRateFollowsTrain, { ...values, beatRateVph: Math.round(exact.valueOf()) }).outcome).toBe('agrees')
  })

  it('T16 shows its rate as a whole number and a fraction', () => {
    const values = { ...entered('60/6 48/6 40/5 33/5', 17), hoursPerCentreTurn: 14.4, beatRateVph: 9973 }
    const judgement = judged(beatRateFollowsTrain, values)
    expect(judgement.outcome).toBe('agrees')
    expect(judgement).toHaveProperty('working.0.formula', '60/6 × 48/6 × 40/5 × 33/5 × 2 × 17 ÷ 14 2/5')
    expect(judgement).toHaveProperty('working.0.gives', '9973 1/3')
  })

  it(`T18 gives 11,440, so far from its neighbours that a count may be misprinted; no rate is printed to hold it to (${derham}, p. 123 sect. 5, second column; A)`, () => {
    const hours = turnsOf('32/6').inverse().mul(12).toFraction()
    expect(hours).toBe('9/4')
    expect(rateOf('66/6 50/5 45/5', 13).toFraction()).toBe(String(printed('25,740')))
    expect(rateOf('66/6 50/5 45/5', 13, hours).toFraction()).toBe(String(printed('11,440')))
    // The rate of the first column of the same page is not its own.
    const values = { ...entered('66/6 50/5 45/5', 13), hoursPerCentreTurn: 2.25, beatRateVph: 15120 }
    expect(judged(beatRateFollowsTrain, values)).toMatchObject({ outcome: 'disagrees', found: 11440 })
  })
})

describe('clock trains at the edges', () => {
  const rows: readonly [
    id: string,
    chain: string,
    escape: number,
    rate: string,
    escapeTurns: string,
    source: string,
  ][] = [
    ['T19', '56/7 54/6', 19, '2,736', '72', `${derham}, pp. 62 and 110; A`],
    ['T20', '72/6 60/6', 30, '7,200', '120', `${encyclopaedia1810}, “Clock”; A`],
    ['T21', '60/8 56/7', 30, '3,600', '60', `${derham}, p. 110; A`],
    [
      'T22',
      '64/8 60/8',
      30,
      '3,600',
      '60',
      `${encyclopaedia1911}, p. 537; ${beckett}, pp. 22–23; ${cunynghame}, p. 124 ff.; A`,
    ],
    ['T25', '96/12 90/12', 30, '3,600', '60', `${goodrich}, p. 492; A`],
  ]
  it.each(rows)('%s: two pairs, %s with %i, have no fourth arbor: %s an hour, the escape arbor %s (%s)', (...row) => {
    const [, chain, escapeTeeth, rate, escapeTurns] = row
    const values = { ...entered(chain, escapeTeeth), beatRateVph: printed(rate) }
    expect(judged(beatRateFollowsTrain, values)).toMatchObject({ outcome: 'agrees', found: printed(rate) })
    expect(turnsOf(chain).toFraction()).toBe(escapeTurns)
    const seconds = judged(secondsHandTurnsOnceAMinute, { ...values, secondsDisplay: 'small' })
    expect(seconds.outcome).toBe(escapeTurns === '60' ? 'agrees' : 'disagrees')
  })

  it.each([
    ['T23', '160/10 120/8', 30, '4', '14,400', '3,600', `${encyclopaedia1810}, “Clock”, Franklin’s; A`],
    ['T24', '120/10 120/6', 90, '12', '43,200', '3,600', `${encyclopaedia1810}, “Clock”, Ferguson’s; A`],
    ['T26', '120/10 90/10 75/9', 3, '3', '5,400', '1,800', `${goodrich}, pp. 257–258, 30 a minute, three-legged; A`],
    ['T27', '120/10 90/9 90/9', 3, '3', '7,200', '2,400', `${goodrich}, pp. 257–258, 40 a minute, three-legged; A`],
  ])('%s: %s with %i, the first driver once in %s hours: %s in its turn, %s an hour (%s)', (...row) => {
    const [, chain, escapeTeeth, hours, inATurn, rate] = row
    expect(rateOf(chain, escapeTeeth).toFraction()).toBe(String(printed(inATurn)))
    expect(rateOf(chain, escapeTeeth, hours).toFraction()).toBe(String(printed(rate)))
    const values = { ...entered(chain, escapeTeeth), hoursPerCentreTurn: Number(hours), beatRateVph: printed(rate) }
    expect(judged(beatRateFollowsTrain, values).outcome).toBe('agrees')
  })

  it(`T28: counts that are nearly right, 3,369.6 for 3,360, shift the rate by 0.29 % (${dietzschold}, p. 208; B)`, () => {
    const near = rateOf('78/10 72/10', 30)
    const right = rateOf('80/10 70/10', 30)
    expectAsPrinted(near.valueOf(), '3,369.6')
    expect(right.toFraction()).toBe(String(printed('3,360')))
    expectAsPrinted(100 * near.div(right).sub(1).valueOf(), '0.29')
    expect(dailyDifference(near.valueOf(), right.valueOf())).toBeCloseTo(246.857, 3)
  })

  it(`T29: the escape arbor turns 133.7 times an hour, 2.229 a minute (${goodrich}, p. 259; A)`, () => {
    expect(turnsOf('84/7 78/7').toFraction(true)).toBe('133 5/7')
    expectAsPrinted(turnsOf('84/7 78/7').valueOf(), '133.7')
    expectAsPrinted(turnsOf('84/7 78/7').div(60).valueOf(), '2.229')
  })
})

describe('customary trains with a fourth arbor that turns once a minute (constructed; D)', () => {
  it.each([
    [14400, 15, '64/8 60/8 56/7'],
    [14400, 15, '90/12 80/10 80/10'],
    [16200, 15, '64/8 60/8 63/7'],
    [16200, 15, '64/8 60/8 54/6'],
    [18000, 15, '64/8 60/8 70/7'],
    [18000, 15, '80/10 75/10 80/8'],
    [18000, 15, '80/10 60/8 60/6'],
    [19800, 15, '64/8 60/8 66/6'],
    [19800, 15, '64/8 60/8 77/7'],
    [21600, 15, '80/10 75/10 84/7'],
    [21600, 15, '80/10 75/10 72/6'],
    [21600, 20, '80/10 75/10 63/7'],
    [25200, 15, '80/10 75/10 98/7'],
    [28800, 20, '80/10 75/10 84/7'],
    [28800, 15, '80/10 75/10 96/6'],
    [28800, 15, '80/10 75/10 112/7'],
    [36000, 20, '80/10 75/10 90/6'],
    [36000, 21, '80/10 75/10 100/7'],
    [36000, 15, '80/10 75/10 120/6'],
  ])('%i with %i escape teeth: %s', (rate, escapeTeeth, chain) => {
    const values = { ...entered(chain, escapeTeeth), beatRateVph: rate, secondsDisplay: 'small' } as const
    expect(judged(beatRateFollowsTrain, values)).toMatchObject({ outcome: 'agrees', found: rate, difference: 0 })
    expect(judged(secondsHandTurnsOnceAMinute, values).outcome).toBe('agrees')
  })

  it.each([
    [15, { 14400: '8', 16200: '9', 18000: '10', 19800: '11', 21600: '12', 25200: '14', 28800: '16', 36000: '20' }],
    [20, { 21600: '9', 28800: '12', 36000: '15' }],
    [21, { 36000: '100/7' }],
  ])('with %i escape teeth the last pair is n / (120 E)', (escapeTeeth, pairs) => {
    for (const [rate, pair] of Object.entries(pairs))
      expect(rateOf(`60/1 ${pair.includes('/') ? pair : `${pair}/1`}`, escapeTeeth).toFraction()).toBe(rate)
  })

  it.each([
    [14400, '4'],
    [16200, '4.5'],
    [18000, '5'],
    [19800, '5.5'],
    [21600, '6'],
    [28800, '8'],
    [36000, '10'],
  ])('%i an hour tick %s times a second', (rate, ticks) => {
    expect(rateForms(rate).beatsPerSecond).toBe(printed(ticks))
  })
})

it(`in a tourbillon the beats follow the motion within the carriage: 18,000, not 19,800 (rule: ${beckett}, pp. 326–327; A; example: D)`, () => {
  // A fixed wheel of 80 round which a pinion of 8 rolls, carriage once a minute.
  expect(rateOf('60/1 80/8', 15).toFraction()).toBe('18000')
  expect(turnsOf('60/1 80/8').add(60).mul(30).toFraction()).toBe('19800')
})

describe(`clock trains of ${goodrich}, pp. 257–258 (A)`, () => {
  it.each(goodrichClockTrains)('%s over %s with %i escape teeth: %s a minute', (...row) => {
    const [wheels, pinions, escapeTeeth, aMinute, exactHourly] = row
    const leaves = pinions.split('x')
    const chain = wheels.split('x').map((wheel, i) => `${wheel}/${leaves[i]}`)
    const found = rateOf(chain.join(' '), escapeTeeth)
    expect(found.toFraction()).toBe(exactHourly)
    // Printed to a tenth a minute; four of the printed rates are out by up to 0.07.
    expect(Math.abs(found.valueOf() / 60 - printed(aMinute))).toBeLessThan(0.07)
    const values = { ...entered(chain.join(' '), escapeTeeth), beatRateVph: found.valueOf() }
    expect(judged(beatRateFollowsTrain, values).outcome).toBe('agrees')
  })
})
