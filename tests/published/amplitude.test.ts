import { describe, expect, it } from 'vitest'
import { amplitude, liftTime, usualAmplitude } from '../../core/formulas/amplitude.ts'
import { amplitudeAtLiftAngle } from '../../core/formulas/amplitude-at-lift-angle.ts'
import { supplementaryArc, totalSwing } from '../../core/formulas/balance-arc.ts'
import { inertiaForRate, rateOfBalance, stiffnessForRate } from '../../core/formulas/balance-oscillator.ts'
import { dailyDifference } from '../../core/formulas/daily-difference.ts'
import { inertiaOfRing } from '../../core/formulas/inertia-of-ring.ts'
import { liftAngleOfFork } from '../../core/formulas/lift-angle-of-fork.ts'
import { rateForms, vibrationsPerHour } from '../../core/formulas/rate-forms.ts'
import { changeForGain, gainFromChange } from '../../core/formulas/regulation.ts'
import { stiffnessFromTorque } from '../../core/formulas/stiffness-from-torque.ts'
import { expectAsPrinted, halfUnit } from '../support/printed.ts'

/*
 * Grades: A, the text was read and the figure computed again; B, read in an excerpt or at second hand; C, from memory;
 * D, constructed: certain arithmetic with nothing to cite. Printed values are kept as printed.
 */
const playtner = 'H. R. Playtner, An Analysis of the Lever Escapement, 1910'
const keystone = 'Watch and Clock Escapements, compiled from The Keystone (year from memory, 1904)'
const kleinlein = 'W. J. Kleinlein, Rules and Practice for Adjusting Watches, 1920'
const playtnerSum = `${playtner}, p. 28; A`
const physics = 'a college physics text, chapter on oscillation, quoted at second hand; B'

describe('angle of contact at the fork and at the balance', () => {
  const rows: readonly [fork: number, ratio: number, printed: string, source: string][] = [
    [10, 3, '30', `${keystone}, p. 55; A`],
    [10, 4, '40', `${keystone}, p. 55; A`],
    [8, 3, '24', `${keystone}, p. 73, double roller; A`],
    [8.5 + 1.5 + 0.5, 3, '31.5', playtnerSum],
    [10, 2.75, '27.5', playtnerSum],
    [10, 5, '50', playtnerSum],
    [10, 3, '30', `${playtner}, p. 35, single roller; A`],
    [10, 3.5, '35', `${playtner}, p. 35, single roller; A`],
  ]
  it.each(rows)('%d at the fork, %d to 1, is %s at the balance (%s)', (fork, ratio, printed, _source) => {
    expect(liftAngleOfFork(fork, ratio)).toBe(Number(printed))
  })
})

describe('total swing, amplitude and the arc free of the fork', () => {
  const turn = 360
  it.each([
    ['one and a half turns', 1.5, 270, playtnerSum],
    ['one and a quarter turns', 1.25, 225, `${kleinlein}, pp. 41–42; A`],
  ] as const)('%s are an amplitude', (_name, turns, amplitudeDeg, _source) => {
    expect(totalSwing(amplitudeDeg)).toBe(turns * turn)
  })

  it.each([
    ['27.5', '512.5', playtnerSum],
    ['50', '490', playtnerSum],
  ] as const)('contact of %s leaves %s of 540 free (%s)', (contact, free, _source) => {
    expect(supplementaryArc(540 / 2, Number(contact))).toBe(Number(free))
  })
})

describe('amplitude from the lift time (derived; D)', () => {
  const rows: readonly [lift: string, rate: string, time: string, exact: string, usual: string][] = [
    ['52', '18,000', '12.00', '276.28', '275.87'],
    ['52', '21,600', '10.00', '276.28', '275.87'],
    ['52', '28,800', '8.00', '259.06', '258.63'],
    ['50', '28,800', '7.50', '265.65', '265.26'],
    ['44', '18,000', '10.40', '269.64', '269.34'],
    ['38', '18,000', '10.00', '242.16', '241.92'],
  ]
  it.each(rows)('lift %s, %s, %s ms: %s exact, %s usual', (lift, rate, time, exact, usual) => {
    const reading = {
      liftAngleDeg: Number(lift),
      beatRateVph: Number(rate.replace(',', '')),
      liftTimeMs: Number(time),
    }
    expectAsPrinted(amplitude(reading), exact)
    expectAsPrinted(usualAmplitude(reading), usual)
    // The short form for milliseconds that stands beside the usual formula.
    expectAsPrinted((usualAmplitude(reading) * reading.beatRateVph * reading.liftTimeMs) / Number(lift), '1,145,916')
  })
})

describe('lift time from the amplitude, lift 52 (derived; D)', () => {
  const amplitudes = [180, 220, 270, 300, 315] as const
  const rows: readonly [rate: string, times: readonly string[]][] = [
    ['18,000', ['18.4558', '15.0826', '12.2799', '11.0486', '10.5212']],
    ['21,600', ['15.3798', '12.5689', '10.2332', '9.2072', '8.7677']],
    ['28,800', ['11.5349', '9.4266', '7.6749', '6.9054', '6.5758']],
    ['36,000', ['9.2279', '7.5413', '6.1399', '5.5243', '5.2606']],
  ]
  const cases = rows.flatMap(([rate, times]) => times.map((time, i) => [rate, amplitudes[i] ?? 0, time] as const))
  it.each(cases)('%s at %d: %s ms, and back', (rate, amplitudeDeg, time) => {
    const train = { liftAngleDeg: 52, beatRateVph: Number(rate.replace(',', '')) }
    expectAsPrinted(liftTime({ ...train, amplitudeDeg }), time)
    // Back from the rounded time: the amplitude is as far off as that rounding, to first order.
    const found = amplitude({ ...train, liftTimeMs: Number(time) })
    expect(Math.abs(found - amplitudeDeg)).toBeLessThanOrEqual((1.01 * amplitudeDeg * halfUnit(time)) / Number(time))
  })
})

describe('what the usual formula and a wrong lift angle do (derived; D)', () => {
  it.each([
    [270, '0.15'],
    [180, '0.35'],
  ])('at %d the usual formula reads %s %% low', (amplitudeDeg, printed) => {
    const swing = { liftAngleDeg: 52, beatRateVph: 18000 }
    const shown = usualAmplitude({ ...swing, liftTimeMs: liftTime({ ...swing, amplitudeDeg }) })
    expectAsPrinted(100 * (1 - shown / amplitudeDeg), printed)
  })

  it('one degree in 52 is 1.9 %, about 5 degrees at 270', () => {
    const shown = amplitudeAtLiftAngle(270, 52, 51)
    expectAsPrinted((100 * (270 - shown)) / 270, '1.9')
    expectAsPrinted(270 - shown, '5')
  })
})

describe('forms of the rate', () => {
  const rows: readonly [rate: number, hertz: string, aSecond: string, aMinute: string, source: string][] = [
    [14400, '2', '4', '240', 'Encyclopaedia Britannica, 4th ed., 1810, both articles (four a second); A'],
    [17280, '2.4', '4.8', '288', 'Encyclopaedia Britannica, 4th ed., 1810, ex. 1 (exact, printed about 4.75); A'],
    [18000, '2.5', '5', '300', `${playtner}, p. 7 (300 a minute); A`],
    [17576, '2.44111', '4.882', '292.93', 'Encyclopaedia Britannica, 4th ed., 1810, ex. 3 (4.882 a second); A'],
    [28800, '4', '8', '480', 'definition; D'],
  ]
  it.each(rows)('%i is %s Hz, %s a second, %s a minute (%s)', (rate, hertz, aSecond, aMinute, _source) => {
    const forms = rateForms(rate)
    expectAsPrinted(forms.hertz, hertz)
    expectAsPrinted(forms.beatsPerSecond, aSecond)
    expectAsPrinted(forms.beatsPerMinute, aMinute)
    expect(vibrationsPerHour(forms.hertz)).toBeCloseTo(rate, 9)
    expect(forms.oscillationMs).toBe(2 * forms.vibrationMs)
  })

  it('7,200 whole oscillations an hour, 120 a minute, are 14,400 vibrations (W. L. Goodrich, The Modern Clock, 1905, p. 192; A)', () => {
    expect(rateForms(vibrationsPerHour(7200 / 3600))).toMatchObject({ beatsPerMinute: 2 * 120 })
    expect(vibrationsPerHour(7200 / 3600)).toBe(14400)
  })
})

describe('balance and hairspring', () => {
  const stiffness = stiffnessFromTorque(1.1e-5, 45)
  const radiusMm = 9.5
  const massG = (hertz: number) =>
    inertiaForRate(stiffness, vibrationsPerHour(hertz)) / inertiaOfRing(1, radiusMm) / 1000

  it(`B1: a thin ring of 0.95 cm that swings at 3.10 Hz weighs 0.41 g (${physics})`, () => {
    expectAsPrinted(stiffness, '1.4006e-5')
    expectAsPrinted(inertiaForRate(stiffness, vibrationsPerHour(3.1)) * 1e-10, '3.6916e-8')
    expectAsPrinted(massG(3.1), '0.409')
    expectAsPrinted(massG(3.1), '0.41')
    const inertia = inertiaOfRing(massG(3.1) * 1000, radiusMm)
    expect(rateOfBalance(inertia, stiffness)).toBeCloseTo(vibrationsPerHour(3.1), 6)
  })

  it(`B2: at 1.55 Hz it weighs 1.636 g (${physics}, no answer seen)`, () => {
    expectAsPrinted(massG(1.55), '1.636')
  })

  it('B3: a watch that gains 45 s a day needs 0.104 % more inertia (a physics exercise, seen at second hand; B)', () => {
    expectAsPrinted(100 * changeForGain('inertia', -45), '0.104')
    expectAsPrinted((100 * 45) / 43200, '0.104')
  })

  it.each([
    ['B4', 16, 2.5, '3.948e-7'],
    ['B5', 10, 4, '6.317e-7'],
  ] as const)('%s: %d mg·cm² at %d Hz needs %s N·m a radian (derived; D)', (_id, inertia, hertz, printed) => {
    const found = stiffnessForRate(inertia, vibrationsPerHour(hertz))
    expectAsPrinted(found, printed)
    expect(rateOfBalance(inertia, found)).toBeCloseTo(vibrationsPerHour(hertz), 6)
  })

  it('B6: a spring one hundredth longer loses 429 s a day, its time of swing grown by half a hundredth (derived; D)', () => {
    expectAsPrinted(gainFromChange('length', 0.01), '-429')
    const before = rateOfBalance(16, 4e-7)
    const after = rateOfBalance(16, 4e-7 / 1.01)
    expectAsPrinted(dailyDifference(after, before), '-429')
    expectAsPrinted(100 * (before / after - 1), '0.5')
  })

  it('the rule of thumb is 43,200 s a day for the whole (Encyclopaedia Britannica, 11th ed., “Clock”, of a pendulum; A)', () => {
    const share = 1 / 43200
    expect(gainFromChange('length', share)).toBeCloseTo(-1, 4)
    expect(gainFromChange('inertia', share)).toBeCloseTo(-1, 4)
    expect(gainFromChange('stiffness', share)).toBeCloseTo(1, 4)
  })
})
