import { describe, expect, it } from 'vitest'
import { goingHours } from '../../core/formulas/going-hours.ts'
import { hoursPerBarrelTurn } from '../../core/formulas/hours-per-barrel-turn.ts'
import { goingHoursFollowSpring } from '../../core/proofs/going-hours-follow-spring.ts'
import { readField } from '../../core/record/read-field.ts'
import { expectAsPrinted, printed } from '../support/printed.ts'
import { judged, turnsOf } from '../support/printed-train.ts'
import { beckett, cunynghame, derham, dietzschold, encyclopaedia1810, goodrich } from './sources.ts'

describe('turns and counts give the published hours', () => {
  type Row = readonly [id: string, turns: string, great: number, pinion: number, hours: string, source: string]
  const rows: readonly Row[] = [
    ['P1', '7', 48, 12, '28', `${encyclopaedia1810}, “Science, Amusements of”, ex. 1; A`],
    ['P2', '6', 50, 10, '30', `${encyclopaedia1810}, the same, Pearson; A`],
    ['P3', '7 1/2', 48, 12, '30', `${encyclopaedia1810}, “Clock”; A`],
    ['P4', '12', 96, 6, '192', `${derham}, p. 121, turns partly illegible and only 12 fits; A`],
    ['P5', '8', 48, 12, '32', `${derham}, p. 122 sect. 3; A`],
    ['P7', '10', 144, 8, '180', `${goodrich}, p. 266; A`],
    ['P8', '16', 96, 8, '192', `${goodrich}, p. 259, 12 to 1 (its counts are ours); A`],
    ['P9', '16', 108, 9, '192', `${derham}, pp. 30–31; A`],
    ['P10', '24', 64, 8, '192', `${cunynghame}, pp. 126–128; A`],
    ['O10', '5.5', 58, 8, '39.875', 'GitHub jes/notes, 20231221.md, noted as 40; P'],
    ['long', '7.5', 72, 12, '45', 'constructed; D'],
    ['long', '6.5', 84, 12, '45.5', 'constructed; D'],
    ['usual', '5', 80, 10, '40', 'constructed; D'],
  ]
  it.each(rows)('%s: %s turns of %i over %i last %s h (%s)', (_id, turns, barrelTeeth, centrePinion, hours) => {
    const perTurn = hoursPerBarrelTurn({ barrelTeeth, centrePinion }).valueOf()
    expect(goingHours(printed(turns), perTurn)).toBe(printed(hours))
    const values = { barrelTeeth, centrePinion, stopWorkTurns: printed(turns), goingHours: printed(hours) }
    expect(judged(goingHoursFollowSpring, values)).toMatchObject({ outcome: 'agrees', found: printed(hours) })
  })

  it(`P7: 18 h a turn, 180 h are 7 1/2 days (${goodrich}, p. 266; A)`, () => {
    expect(hoursPerBarrelTurn({ barrelTeeth: 144, centrePinion: 8 }).valueOf()).toBe(printed('18'))
    expect(printed('180') / 24).toBe(printed('7 1/2'))
  })

  it(`P8: 16 turns of a barrel of 5 in round let a doubled line down 40 in (${goodrich}, p. 259; A)`, () => {
    expect((16 * printed('5')) / 2).toBe(printed('40'))
  })

  it(`P10: 9 ft of cord in 24 laps are 4.5 in a lap, a drum of rather less than 1 1/2 in (${cunynghame}, pp. 126–128; A)`, () => {
    expect(hoursPerBarrelTurn({ barrelTeeth: 64, centrePinion: 8 }).valueOf()).toBe(printed('8'))
    expect((9 * 12) / 24).toBe(printed('4.5'))
    expectAsPrinted(4.5 / Math.PI, '1.432')
    expect(4.5 / Math.PI).toBeLessThan(printed('1 1/2'))
  })

  it(`P11: 96 over 8 turn the great wheel once in 12 h (${beckett}, p. 133; ${derham}, p. 110)`, () => {
    expect(hoursPerBarrelTurn({ barrelTeeth: 96, centrePinion: 8 }).valueOf()).toBe(12)
  })

  it(`P12: an extra pair of 4 to 1 makes 32 days of 8 (${goodrich}, p. 260; A; the counts are ours)`, () => {
    const month = { barrelTeeth: 96, intermediate: { pinion: 12, wheel: 48 }, centrePinion: 8 }
    expect(goingHours(16, hoursPerBarrelTurn(month).valueOf()) / 24).toBe(printed('32'))
  })

  it.each([
    ['P13c', '108/12 72/9 64/8', '576', '384', `${derham}, p. 115; A`],
    ['P13c', '90/10 64/8 56/7', '576', '384', `${derham}, p. 117; A`],
    ['P13d, “seven months”', '60/8 56/8 48/8', '315', '210', `${derham}, p. 114 sect. 6; A`],
    ['P13f, headed 13 weeks, which are 91 days', '96/8 88/8', '132', '88', `${derham}, p. 114 sect. 5; A`],
    ['P13f, the same', '72/6 66/6', '132', '88', `${derham}, p. 114 sect. 5; A`],
  ])('%s: %s turns once in %s h, 16 turns last %s days (%s)', (_id, chain, hours, days) => {
    expect(turnsOf(chain).toFraction()).toBe(hours)
    expect(goingHours(16, printed(hours)) / 24).toBe(printed(days))
  })

  it('P13f through the barrel’s own relation, with the intermediate pair', () => {
    const thirteenWeeks = { barrelTeeth: 96, intermediate: { pinion: 8, wheel: 88 }, centrePinion: 8 }
    expect(hoursPerBarrelTurn(thirteenWeeks).toFraction()).toBe('132')
  })

  it(`P17: 25 laps on a drum of 140 mm are 11,000 mm of cord to the ten, 125 h at 5 h a lap (${dietzschold}, p. 255; B; the hours: D)`, () => {
    const cord = Math.PI * 140 * 25
    expectAsPrinted(cord, '10,996')
    expectAsPrinted(cord / 10, '1,100')
    // A three-strand tackle lets down a third; 3.66 m is printed, cut off and not rounded.
    expect(Math.floor(cord / 30) / 100).toBe(printed('3.66'))
    expect(goingHours(25, 5)).toBe(125)
  })
})

describe('turns that a spring has and turns that are used', () => {
  it(`P14, O6: 17 coils run down and 25 wound are 8 turns (${goodrich}, p. 281; A)`, () => {
    expect(printed('25') - printed('17')).toBe(printed('8'))
  })

  it(`P15, O11: of 17 turns, 10 with stop-work and 4 set up, 3 stay unused at the wall; only the 10 count (${goodrich}, p. 283; A)`, () => {
    expect(printed('17') - printed('10') - printed('4')).toBe(printed('3'))
    const values = { barrelTeeth: 96, centrePinion: 12, stopWorkTurns: 10, goingHours: 80 }
    expect(judged(goingHoursFollowSpring, values)).toMatchObject({ outcome: 'agrees', found: 80 })
    expect(judged(goingHoursFollowSpring, { ...values, goingHours: 17 * 8 }).outcome).toBe('disagrees')
  })

  it(`P16: a Maltese-cross stop of five notches uses about 4 turns, as usual (${goodrich}, p. 284, notches; A; turns: C)`, () => {
    expect(readField('stopWorkTurns', '4')).not.toHaveProperty('remark')
  })

  it.each([
    ['P2', '40', '8', '5', 'Wikipedia, “Mainspring”; P'],
    ['P3', '32', '8', '4', 'a build log after Daniels, 4 of 6 turns used; P'],
    ['P3', '48', '8', '6', 'the same, if all six were used; P'],
    ['P4', '192', '12', '16', `${goodrich}, p. 259; P`],
  ])('mainsprings %s: %s h at %s h a turn are %s turns (%s)', (_id, hours, perTurn, turns) => {
    expect(goingHours(printed(turns), printed(perTurn))).toBe(printed(hours))
  })

  it('mainsprings P6: about 3.5 turns in about 8 days are 54.9 h a turn (mysterieuse-uhren.de 5.6; P)', () => {
    expectAsPrinted((8 * 24) / printed('3.5'), '54.9')
  })

  it('mainsprings P7: one-day work goes 36 to 40 h, as usual; eight-day work at least 192 h is read as printed (Wikipedia, “Mainspring”; P)', () => {
    for (const hours of ['36', '40']) expect(readField('goingHours', hours)).not.toHaveProperty('remark')
    expect(readField('goingHours', '8 days')).toMatchObject({ ok: true, value: printed('192') })
  })

  it.each([
    ['5.0', '32.0', '35.0', '36.250', '40.0'],
    ['5.5', '35.2', '38.5', '39.875', '44.0'],
    ['6.0', '38.4', '42.0', '43.500', '48.0'],
    ['6.5', '41.6', '45.5', '47.125', '52.0'],
    ['7.0', '44.8', '49.0', '50.750', '56.0'],
    ['7.5', '48.0', '52.5', '54.375', '60.0'],
  ])('%s turns of 64/10, 70/10 and 84/12, 58/8, 80/10 and 96/12 (D)', (turns, ...hours) => {
    const barrels = [['64/10'], ['70/10', '84/12'], ['58/8'], ['80/10', '96/12']]
    barrels.forEach((pairs, i) => {
      for (const pair of pairs) expectAsPrinted(goingHours(printed(turns), turnsOf(pair).valueOf()), hours[i] ?? '')
    })
  })
})
