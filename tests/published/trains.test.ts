import Fraction from 'fraction.js'
import { describe, expect, it } from 'vitest'
import { beatRate } from '../../core/formulas/beat-rate.ts'
import { dailyDifference } from '../../core/formulas/daily-difference.ts'
import { gearRatio } from '../../core/formulas/gear-ratio.ts'
import { goingHours } from '../../core/formulas/going-hours.ts'
import { hoursPerBarrelTurn } from '../../core/formulas/hours-per-barrel-turn.ts'
import { motionWorkRatio } from '../../core/formulas/motion-work.ts'
import { beatRateFollowsTrain } from '../../core/proofs/beat-rate-follows-train.ts'
import { secondsHandTurnsOnceAMinute } from '../../core/proofs/seconds-hand-turns-once-a-minute.ts'
import type { CaliberValues } from '../../core/record/caliber.ts'
import { goodrichClockTrains } from './goodrich-clock-trains.ts'

/*
 * Grades: A, the text was read and the figure computed again; B, read in an excerpt or at second hand; C, from memory;
 * D, constructed: certain arithmetic with nothing to cite. Printed values are kept as printed.
 */
const derham = 'W. Derham, The Artificial Clock-maker, 1696'
const eb1810 = 'Encyclopaedia Britannica, 4th ed., 1810'
const goodrich = 'W. L. Goodrich, The Modern Clock, 1905'
const playtner = 'H. R. Playtner, An Analysis of the Lever Escapement, 1910'
const dietzschold = 'C. Dietzschold, Die Turmuhren (year from memory, 1894)'

type Pair = readonly [wheel: number, pinion: number]
/** A chain of pairs as written: wheel over pinion. */
const pairs = (text: string): Pair[] =>
  text.split(' ').map((pair) => {
    const [wheel, pinion] = pair.split('/').map(Number)
    return [wheel ?? 0, pinion ?? 0]
  })

const rateOf = (chain: readonly Pair[], escapeTeeth: number, hoursPerFirstTurn?: Fraction) =>
  beatRate(
    chain.map(([wheel]) => wheel),
    chain.map(([, pinion]) => pinion),
    escapeTeeth,
    hoursPerFirstTurn,
  )
const turns = (chain: readonly Pair[]) =>
  gearRatio(
    chain.map(([wheel]) => wheel),
    chain.map(([, pinion]) => pinion),
  ).toFraction()

/** The pairs of a train, entered from the centre wheel on as a person would. */
const entered = (chain: readonly Pair[], escapeTeeth: number): CaliberValues => {
  const [centre, third, fourth, fifth] = chain
  const last = chain.at(-1)
  return {
    ...(centre && { centreWheel: centre[0] }),
    ...(third && { thirdPinion: centre?.[1] ?? 0, thirdWheel: third[0] }),
    ...(fourth && { fourthPinion: third?.[1] ?? 0, fourthWheel: fourth[0] }),
    ...(fifth && { fifthPinion: fourth?.[1] ?? 0, fifthWheel: fifth[0] }),
    ...(last && { escapePinion: last[1] }),
    escapeTeeth,
  }
}
const lists = { jewels: [], lubrication: [], depths: [], parts: [], stripOrder: [] }
const judge = (proof: typeof beatRateFollowsTrain, values: CaliberValues) =>
  proof.judge({ values, readings: {}, lists })

describe('published watch trains give their exact rate', () => {
  const rows: readonly [string, Pair[], number, number, string][] = [
    ['T1', pairs('54/6 48/6 48/6'), 15, 17280, `${eb1810}, “Science, Amusements of”, ex. 1; A`],
    ['T3', pairs('54/6 52/6 52/6'), 13, 17576, `${eb1810}, the same, ex. 3; A`],
    ['T5', pairs('60/8 64/8 48/6'), 15, 14400, `${eb1810}, the same, Pearson’s numbers; A`],
    ['T6', pairs('60/10 60/6 48/6'), 15, 14400, `${eb1810}, “Clock”; A`],
    ['T7', pairs('48/6 48/6 45/6'), 15, 14400, `${goodrich}, p. 192; A`],
    ['T9', pairs('54/6 48/6 45/6'), 15, 16200, `${derham}, p. 122 sect. 4, no rate printed; A`],
    ['T10', pairs('48/6 45/6 42/6'), 19, 15960, `${derham}, p. 121 sect. 1; A`],
    ['T11', pairs('64/8 60/8 40/8'), 15, 9000, `${derham}, p. 30; A`],
    ['T21b', pairs('48/6 45/6 30/6'), 15, 9000, `${derham}, p. 116 sect. 10; A`],
  ]
  it.each(rows)('%s', (_id, chain, escapeTeeth, rate, _source) => {
    expect(rateOf(chain, escapeTeeth).toFraction()).toBe(String(rate))
    expect(judge(beatRateFollowsTrain, { ...entered(chain, escapeTeeth), beatRateVph: rate }).outcome).toBe('agrees')
  })

  it(`T8: the last pair alone, with the fourth once a minute (${playtner}, p. 7; A)`, () => {
    expect(rateOf(pairs('60/1 75/8'), 16).toFraction()).toBe('18000')
  })

  it(`T11b: 80/10 and 75/10 turn the seconds arbor 60 times (${goodrich}, p. 265; A)`, () => {
    expect(turns(pairs('80/10 75/10'))).toBe('60')
  })
})

describe('trains with no wheel that turns once an hour give their exact rate', () => {
  const rows: readonly [string, Pair[], number, string, string, string][] = [
    ['T12', pairs('55/5 45/5 40/5'), 17, '4/3', '20196', `${derham}, pp. 19–25; A`],
    ['T14', pairs('55/5 45/5 40/5'), 17, '12/7', '15708', `${derham}, p. 26; A`],
    ['T15', pairs('66/6 60/6 50/5 45/5'), 19, '24', '15675', `${derham}, p. 122 sect. 2; A`],
    ['T16', pairs('60/6 48/6 40/5 33/5'), 17, '72/5', '29920/3', `${derham}, pp. 26–29, with 20/24 cut; A`],
    ['T17', pairs('63/7 42/6 36/6 32/6'), 15, '4', '15120', `${derham}, p. 123 sect. 5; A`],
    ['T19b', pairs('78/6 60/6 42/6'), 15, '3', '9100', `${derham}, p. 115 sect. 8; A`],
  ]
  it.each(rows)('%s', (_id, chain, escapeTeeth, hours, rate, _source) => {
    const exact = rateOf(chain, escapeTeeth, new Fraction(hours))
    expect(exact.toFraction()).toBe(rate)
    // The great wheel stands for the centre wheel; the hours come as a plain number, as from a file.
    const values = { ...entered(chain, escapeTeeth), hoursPerCentreTurn: new Fraction(hours).valueOf() }
    const judgement = judge(beatRateFollowsTrain, { ...values, beatRateVph: Math.round(exact.valueOf()) })
    expect(judgement.outcome).toBe('agrees')
  })

  it('T16 shows its rate as a whole number and a fraction', () => {
    const values = {
      ...entered(pairs('60/6 48/6 40/5 33/5'), 17),
      hoursPerCentreTurn: 14.4,
      beatRateVph: 10138,
    }
    const judgement = judge(beatRateFollowsTrain, values)
    // Derham’s own rate of 2 × 5 069 is for a ratio that he did not cut (erratum E11).
    expect(judgement).toMatchObject({ outcome: 'disagrees', working: [{ gives: '9973 1/3' }] })
  })

  it.each([
    ['T12', pairs('55/5 45/5 40/5'), 17, '26928'],
    ['T15', pairs('66/6 60/6 50/5 45/5'), 19, '376200'],
    ['T16', pairs('60/6 48/6 40/5 33/5'), 17, '143616'],
    ['T17', pairs('63/7 42/6 36/6 32/6'), 15, '60480'],
    ['T19', pairs('56/7 54/6'), 19, '2736'],
  ])('%s: beats in a turn of the great wheel (Derham; A)', (_id, chain, escapeTeeth, beats) => {
    expect(rateOf(chain, escapeTeeth).toFraction()).toBe(beats)
  })
})

describe('clock trains at the edges', () => {
  const rows: readonly [string, Pair[], number, number, string, string][] = [
    ['T19', pairs('56/7 54/6'), 19, 2736, '72', `${derham}, pp. 62 and 110; A`],
    ['T20', pairs('72/6 60/6'), 30, 7200, '120', `${eb1810}, “Clock”; A`],
    ['T21', pairs('60/8 56/7'), 30, 3600, '60', `${derham}, p. 110; A`],
    ['T22', pairs('64/8 60/8'), 30, 3600, '60', 'Encyclopaedia Britannica, 11th ed., “Clock”, p. 537; A'],
    ['T25', pairs('96/12 90/12'), 30, 3600, '60', `${goodrich}, p. 492; A`],
  ]
  it.each(rows)(
    '%s: two pairs, read as a train without a fourth arbor',
    (_id, chain, escapeTeeth, rate, escapeTurns) => {
      const values = { ...entered(chain, escapeTeeth), beatRateVph: rate }
      expect(judge(beatRateFollowsTrain, values)).toMatchObject({ outcome: 'agrees', found: rate })
      expect(turns(chain)).toBe(escapeTurns)
      const seconds = judge(secondsHandTurnsOnceAMinute, { ...values, secondsDisplay: 'small' })
      expect(seconds.outcome).toBe(escapeTurns === '60' ? 'agrees' : 'disagrees')
    },
  )

  it.each([
    ['T23', pairs('160/10 120/8'), 30, '4', '3600', `${eb1810}, “Clock”, Franklin’s; A`],
    ['T24', pairs('120/10 120/6'), 90, '12', '3600', `${eb1810}, “Clock”, Ferguson’s; A`],
    ['T26', pairs('120/10 90/10 75/9'), 3, '3', '1800', `${goodrich}, pp. 257–258, three-legged; A`],
    ['T27', pairs('120/10 90/9 90/9'), 3, '3', '2400', `${goodrich}, pp. 257–258, three-legged; A`],
  ])('%s: first driver once in several hours', (_id, chain, escapeTeeth, hours, rate, _source) => {
    expect(rateOf(chain, escapeTeeth, new Fraction(hours)).toFraction()).toBe(rate)
  })

  it(`T28: counts that are nearly right shift the rate by 0.29 % (${dietzschold}, p. 208; B)`, () => {
    const near = rateOf(pairs('78/10 72/10'), 30)
    const right = rateOf(pairs('80/10 70/10'), 30)
    expect([near.toString(), right.toString()]).toEqual(['3369.6', '3360'])
    expect(dailyDifference(near.valueOf(), right.valueOf())).toBeCloseTo(246.857, 3)
  })

  it(`T29: the escape arbor turns 133 5/7 times an hour, printed 133.7 (${goodrich}, p. 259; A)`, () => {
    expect(turns(pairs('84/7 78/7'))).toBe('936/7')
    expect(Math.abs(936 / 7 - Number('133.7'))).toBeLessThanOrEqual(0.05)
  })
})

describe('customary trains with a fourth arbor that turns once a minute (constructed; D)', () => {
  const rows: readonly [number, number, Pair[]][] = [
    [14400, 15, pairs('64/8 60/8 56/7')],
    [14400, 15, pairs('90/12 80/10 80/10')],
    [16200, 15, pairs('64/8 60/8 63/7')],
    [16200, 15, pairs('64/8 60/8 54/6')],
    [18000, 15, pairs('64/8 60/8 70/7')],
    [18000, 15, pairs('80/10 75/10 80/8')],
    [18000, 15, pairs('80/10 60/8 60/6')],
    [19800, 15, pairs('64/8 60/8 66/6')],
    [19800, 15, pairs('64/8 60/8 77/7')],
    [21600, 15, pairs('80/10 75/10 84/7')],
    [21600, 20, pairs('80/10 75/10 63/7')],
    [25200, 15, pairs('80/10 75/10 98/7')],
    [28800, 20, pairs('80/10 75/10 84/7')],
    [28800, 15, pairs('80/10 75/10 96/6')],
    [28800, 15, pairs('80/10 75/10 112/7')],
    [36000, 20, pairs('80/10 75/10 90/6')],
    [36000, 21, pairs('80/10 75/10 100/7')],
    [36000, 15, pairs('80/10 75/10 120/6')],
  ]
  it.each(rows)('%i with %i escape teeth', (rate, escapeTeeth, chain) => {
    const values: CaliberValues = { ...entered(chain, escapeTeeth), beatRateVph: rate, secondsDisplay: 'small' }
    expect(judge(beatRateFollowsTrain, values)).toMatchObject({ outcome: 'agrees', found: rate, difference: 0 })
    const seconds = judge(secondsHandTurnsOnceAMinute, values)
    expect(seconds.outcome).toBe('agrees')
  })
})

describe(`clock trains of ${goodrich}, pp. 257–258 (A)`, () => {
  it.each(goodrichClockTrains)(
    '%s over %s with %i escape teeth',
    (wheels, pinions, escapeTeeth, printed, exactHourly) => {
      const pinionList = pinions.split('x').map(Number)
      const chain = wheels.split('x').map((wheel, i): Pair => [Number(wheel), pinionList[i] ?? 0])
      const found = rateOf(chain, escapeTeeth)
      expect(found.toFraction()).toBe(exactHourly)
      // Printed to a tenth a minute; four of the printed rates are out by up to 0.07.
      expect(Math.abs(found.valueOf() / 60 - Number(printed))).toBeLessThan(0.07)
      expect(
        judge(beatRateFollowsTrain, { ...entered(chain, escapeTeeth), beatRateVph: found.valueOf() }).outcome,
      ).toBe('agrees')
    },
  )
})

describe('motion work', () => {
  const rows: readonly [string, number, number, number, number, string][] = [
    ['W1', 10, 40, 12, 36, `${eb1810}, both articles; A`],
    ['W2', 12, 36, 10, 40, `${goodrich}, p. 293; A`],
    ['W3', 12, 48, 12, 36, `${derham}, pp. 121–122; A`],
    ['W4', 14, 42, 12, 48, 'E. Beckett, A Rudimentary Treatise on Clocks, 8th ed., 1903, p. 297; A'],
    ['W4 paired the other way', 12, 42, 14, 48, 'the same'],
    ['W6', 48, 48, 6, 72, `${derham}, pp. 110–111; A`],
    ['W7', 30, 30, 6, 72, `${eb1810}, “Clock”; A`],
    ['W8', 30, 30, 7, 84, `${goodrich}, p. 295; A`],
  ]
  it.each(rows)('%s gives 12 to 1', (_id, cannonPinion, minuteWheel, minutePinion, hourWheel, _source) => {
    expect(motionWorkRatio({ cannonPinion, minuteWheel, minutePinion, hourWheel }).toFraction()).toBe('12')
  })

  it.each([
    [12, 36, 10, 38, '57/5'],
    [12, 30, 8, 40, '25/2'],
  ])(
    '%i to %i with %i to %i does not (constructed; D)',
    (cannonPinion, minuteWheel, minutePinion, hourWheel, ratio) => {
      expect(motionWorkRatio({ cannonPinion, minuteWheel, minutePinion, hourWheel }).toFraction()).toBe(ratio)
    },
  )
})

describe('duration of going', () => {
  const rows: readonly [string, number, number, number, string, string][] = [
    ['P1', 7, 48, 12, '28', `${eb1810}, “Science, Amusements of”, ex. 1; A`],
    ['P2', 6, 50, 10, '30', `${eb1810}, the same, Pearson; A`],
    ['P3', 7.5, 48, 12, '30', `${eb1810}, “Clock”; A`],
    ['P4', 12, 96, 6, '192', `${derham}, p. 121; A`],
    ['P5', 8, 48, 12, '32', `${derham}, p. 122 sect. 3; A`],
    ['P7', 10, 144, 8, '180', `${goodrich}, p. 266; A`],
    ['P8', 16, 96, 8, '192', `${goodrich}, p. 259, 12 to 1; A`],
    ['P9', 16, 108, 9, '192', `${derham}, pp. 30–31; A`],
    ['P10', 24, 64, 8, '192', 'H. H. Cunynghame, Time and Clocks, 1906, pp. 126–128; A'],
    ['long', 7.5, 72, 12, '45', 'constructed; D'],
    ['long', 6.5, 84, 12, '45.5', 'constructed; D'],
    ['usual', 5, 80, 10, '40', 'constructed; D'],
  ]
  it.each(rows)('%s: %d turns of %i over %i', (_id, barrelTurns, barrelTeeth, centrePinion, hours, _source) => {
    const perTurn = hoursPerBarrelTurn({ barrelTeeth, centrePinion }).valueOf()
    expect(goingHours(barrelTurns, perTurn)).toBe(Number(hours))
  })

  it(`P13: long trains have their great wheel turn in 576, 315 and 132 h (${derham}, pp. 114–117; A)`, () => {
    expect(turns(pairs('108/12 72/9 64/8'))).toBe('576')
    expect(turns(pairs('90/10 64/8 56/7'))).toBe('576')
    expect(turns(pairs('60/8 56/8 48/8'))).toBe('315')
    const thirteenWeeks = { barrelTeeth: 96, intermediate: { pinion: 8, wheel: 88 }, centrePinion: 8 }
    expect(hoursPerBarrelTurn(thirteenWeeks).valueOf()).toBe(132)
    // Headed 13 weeks, that is 91 days: the heading is nominal.
    expect((16 * 132) / 24).toBe(88)
  })
})

describe('the seconds hand', () => {
  const rows: readonly [string, Pair[], string][] = [
    ['60', pairs('60/8 64/8'), `${eb1810}, Pearson; A`],
    ['60', pairs('60/10 60/6'), `${eb1810}, “Clock”; A`],
    ['60', pairs('48/6 45/6'), `${derham}, p. 121; A`],
    ['60', pairs('112/14 105/14'), `${goodrich}, table, row 112 × 105; A`],
    ['64', pairs('48/6 48/6'), `${goodrich}, p. 192; A`],
    ['72', pairs('54/6 48/6'), `${eb1810}, ex. 1; A`],
    ['78', pairs('54/6 52/6'), `${eb1810}, ex. 3; A`],
  ]
  it.each(rows)('the fourth arbor turns %s times an hour (%j)', (found, chain, _source) => {
    expect(turns(chain)).toBe(found)
    const judgement = judge(secondsHandTurnsOnceAMinute, {
      ...entered([...chain, [80, 8]], 15),
      secondsDisplay: 'small',
    })
    expect(judgement.outcome).toBe(found === '60' ? 'agrees' : 'disagrees')
  })
})

describe('mistakes in print are found out', () => {
  it(`E2: 7 200 whole oscillations printed as vibrations (${goodrich}, p. 192; A)`, () => {
    const values = {
      ...entered(pairs('48/6 48/6 45/6'), 15),
      beatRateVph: 7200,
    }
    expect(judge(beatRateFollowsTrain, values)).toMatchObject({ outcome: 'disagrees', found: 14400 })
  })

  it(`E4: about 4.75 beats a second printed, 4.8 counted (${eb1810}, ex. 1; A)`, () => {
    const values = {
      ...entered(pairs('54/6 48/6 48/6'), 15),
      beatRateVph: 4.75 * 3600,
    }
    expect(judge(beatRateFollowsTrain, values)).toMatchObject({ outcome: 'disagrees', found: 17280 })
  })

  it('E22: 600 to 1 printed for 36 000, which 15 teeth make 18 000 and 30 teeth 36 000 (an encyclopaedia mirror; B)', () => {
    expect(rateOf(pairs('600/1'), 15).valueOf()).toBe(18000)
    expect(rateOf(pairs('600/1'), 30).valueOf()).toBe(36000)
  })

  it(`T10: the nominal 16 000 is doubtful against 15 960, 216 s a day off (${derham}, p. 122 sect. 3; A)`, () => {
    const values = {
      ...entered(pairs('48/6 45/6 42/6'), 19),
      beatRateVph: 16000,
    }
    const judgement = judge(beatRateFollowsTrain, values)
    expect(judgement).toMatchObject({ outcome: 'doubtful', difference: -40, details: { secondsPerDay: -216 } })
  })

  it(`E9: 20 h printed where 12 turns with dial 28/4 last 20.57 h (${derham}, p. 26; A)`, () => {
    expect(goingHours(12, 12 / 7)).toBeCloseTo(20.571, 3)
  })

  it(`E10: 30 hours printed over 8 turns of 48/12, which last 32 (${derham}, p. 122 sect. 4; A)`, () => {
    expect(goingHours(8, hoursPerBarrelTurn({ barrelTeeth: 48, centrePinion: 12 }).valueOf())).toBe(32)
  })
})
