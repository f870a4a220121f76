import { describe, expect, it } from 'vitest'
import { wheelsShareAModule as proof } from '../../../core/proofs/wheels-share-a-module.ts'
import type { CaliberValues, Depth } from '../../../core/record/caliber.ts'
import { without } from '../../support/caliber-of.ts'
import { caliberWithLists } from '../../support/caliber-with-lists.ts'
import { printedDepth } from '../../support/printed-depth.ts'

const counts: CaliberValues = { centreWheel: 80, thirdPinion: 10, thirdWheel: 75, fourthPinion: 10 }
const judge = (depths: readonly Depth[], values: CaliberValues = counts) =>
  proof.judge(caliberWithLists({ depths }, values))
const first = (...sizes: readonly string[]) => printedDepth('centre wheel', 'third pinion', sizes)
const second = (...sizes: readonly string[]) => printedDepth('third wheel', 'fourth pinion', sizes)

describe('wheel and pinion of a depth', () => {
  it('agree where one module explains every size, each with its line of working', () => {
    expect(judge([first('10.40', '1.30', '5.850')])).toMatchObject({
      outcome: 'agrees',
      reason: 'module-shared',
      working: [
        { formula: '10.4 ÷ 80', where: { centreWheel: 80, thirdPinion: 10, driverPitchMm: 10.4 }, gives: '0.1300' },
        { formula: '1.3 ÷ 10', gives: '0.1300' },
        { formula: '2 × 5.85 ÷ (80 + 10)', gives: '0.1300' },
      ],
      fields: ['centreWheel', 'thirdPinion'],
    })
  })

  it('disagree where they do not, and the worst depth decides', () => {
    expect(judge([first('10.40', '1.30', '5.850'), second('9.00', '1.20', '5.300')])).toMatchObject({
      outcome: 'disagrees',
      reason: 'module-differs',
      details: { driver: 'third wheel', driven: 'fourth pinion', first: 'driverPitchMm', second: 'centreDistanceMm' },
    })
    expect(judge([second('9.00', '1.20', '5.300'), first('10.40', '1.30', '5.850')])).toMatchObject({
      outcome: 'disagrees',
      details: { driver: 'third wheel', depths: 2, unchecked: 0 },
    })
  })

  it('is found under a foreign name, and by the wheel on whose arbor the pinion sits', () => {
    const named = (driver: string, driven: string) => judge([printedDepth(driver, driven, ['10.40', '1.30', ''])])
    expect(named('Großbodenrad', 'Kleinbodenradtrieb').outcome).toBe('agrees')
    expect(named('roue de centre', 'petite moyenne').outcome).toBe('agrees')
  })

  it('includes those of the motion work, where a pinion drives', () => {
    const values = { cannonPinion: 12, minuteWheel: 36, minutePinion: 10, hourWheel: 40 }
    const depths = [
      printedDepth('cannon pinion', 'minute wheel', ['1.20', '3.60', '2.40']),
      printedDepth('minute wheel', 'hour wheel', ['1.00', '4.00', '2.50']),
    ]
    expect(judge(depths, values)).toMatchObject({ outcome: 'agrees', fields: Object.keys(values) })
  })
})

describe('the edge of the printed rounding, exactly', () => {
  // Within 8.615 to 8.625 over 75 lies 0.115 at the very end, and so it does within 4.8875 to 4.8885.
  it.each([
    ['8.62', '1.150', '4.888', 'agrees'],
    ['8.62', '1.1500', '4.8875', 'agrees'],
    ['8.62', '1.1501', '4.888', 'doubtful'],
    ['8.620', '1.1500', '', 'doubtful'],
    ['8.625', '1.1500', '', 'agrees'],
  ])('%s over 75 and %s over 10 at %s: %s', (wheel, pinion, centres, outcome) => {
    expect(judge([second(wheel, pinion, centres)]).outcome).toBe(outcome)
  })

  it('takes 1 % of the module beyond as doubtful and no more', () => {
    const exact = (drivenPitchMm: number) => ({
      driver: 'centre wheel',
      driven: 'third pinion',
      driverPitchMm: 8,
      drivenPitchMm,
    })
    expect(judge([exact(1.01)])).toMatchObject({ outcome: 'doubtful', reason: 'module-near' })
    expect(judge([exact(1.0101)])).toMatchObject({ outcome: 'disagrees', reason: 'module-differs' })
  })

  it('goes by the limits where they are printed', () => {
    expect(judge([first('8 ±0.2', '1.02 ±0.001', '')]).outcome).toBe('agrees')
    expect(judge([first('8 ±0.01', '1.02 ±0.001', '')]).outcome).toBe('disagrees')
  })
})

describe('what cannot be checked', () => {
  it('is a caliber without depths', () => {
    expect(judge([])).toEqual({ outcome: 'cannot-check', missing: ['depths'] })
  })

  it.each(['centreWheel', 'thirdPinion'] as const)('is a depth without %s, which is named', (key) => {
    expect(judge([first('10.40', '1.30')], without(counts, key))).toEqual({ outcome: 'cannot-check', missing: [key] })
  })

  it('is a depth with a single size, or between parts that have no count', () => {
    expect(judge([first('10.40')])).toEqual({ outcome: 'cannot-check', missing: ['depths'] })
    expect(judge([printedDepth('crown wheel', 'ratchet wheel', ['4.00', '5.00'])])).toMatchObject({
      outcome: 'cannot-check',
    })
  })

  it('is said of the depths left over where others are checked', () => {
    expect(judge([first('10.40', '1.30'), second('9.00')])).toMatchObject({
      outcome: 'agrees',
      details: { depths: 1, unchecked: 1 },
    })
  })
})

describe('a depth without counts', () => {
  const winding = (...sizes: readonly string[]) => judge([printedDepth('crown wheel', 'ratchet wheel', sizes)])
  it('is held to half of both pitch diameters', () => {
    expect(winding('4.00', '5.00', '4.50')).toMatchObject({
      outcome: 'agrees',
      working: [
        { formula: '(4 + 5) ÷ 2', gives: 4.5 },
        { formula: 'centre distance', gives: 4.5 },
      ],
    })
    expect(winding('4.00', '5.00', '4.510').outcome).toBe('doubtful')
    expect(winding('4.00', '5.00', '4.50').outcome).toBe('agrees')
    expect(winding('4.00', '5.00', '4.70')).toMatchObject({ outcome: 'disagrees', reason: 'centres-differ' })
  })
})

describe('what is said of a depth, in full', () => {
  it('is the module of each size, how far they lie apart, and the centre distance that would suit', () => {
    // 9 ÷ 75 is 0.12; 2 × 5.3 ÷ 85 is 0.1247: 5.1 mm would suit the wheel.
    expect(judge([second('9.00', '1.20', '5.300')])).toEqual({
      outcome: 'disagrees',
      stated: expect.closeTo(0.12, 9),
      found: expect.closeTo(0.124706, 6),
      unit: 'mm',
      difference: expect.closeTo(0.004706, 6),
      // Half of 0.01 over 75 and half of 0.001 over 42.5.
      allowed: expect.closeTo(0.00007843, 8),
      working: [
        {
          formula: '9 ÷ 75',
          where: { driver: 'third wheel', driven: 'fourth pinion', driverPitchMm: 9, thirdWheel: 75, fourthPinion: 10 },
          gives: '0.1200',
        },
        {
          formula: '1.2 ÷ 10',
          where: {
            driver: 'third wheel',
            driven: 'fourth pinion',
            drivenPitchMm: 1.2,
            thirdWheel: 75,
            fourthPinion: 10,
          },
          gives: '0.1200',
        },
        {
          formula: '2 × 5.3 ÷ (75 + 10)',
          where: {
            driver: 'third wheel',
            driven: 'fourth pinion',
            centreDistanceMm: 5.3,
            thirdWheel: 75,
            fourthPinion: 10,
          },
          gives: '0.1247',
        },
      ],
      reason: 'module-differs',
      details: {
        driver: 'third wheel',
        driven: 'fourth pinion',
        first: 'driverPitchMm',
        second: 'centreDistanceMm',
        depths: 1,
        unchecked: 0,
        centreDistanceMm: expect.closeTo(5.1, 9),
      },
      fields: ['thirdWheel', 'fourthPinion'],
    })
  })

  it('is by pinion and centres where the wheel was not measured', () => {
    expect(judge([second('', '1.20', '5.300')])).toMatchObject({
      outcome: 'disagrees',
      details: { first: 'drivenPitchMm', second: 'centreDistanceMm' },
      working: [{ formula: '1.2 ÷ 10' }, { formula: '2 × 5.3 ÷ (75 + 10)' }],
    })
  })

  it('is of the first of two that are equally out', () => {
    const depths = [second('9.00', '1.30'), { ...second('9.00', '1.30'), driver: 'Kleinbodenrad' }]
    expect(judge(depths)).toMatchObject({ details: { driver: 'third wheel', depths: 2 } })
  })

  it('names no count and no module where none is known', () => {
    const judgement = judge([printedDepth('crown wheel', 'ratchet wheel', ['4.0', '5.0', '4.70'])], {})
    expect(judgement).toMatchObject({
      outcome: 'disagrees',
      stated: 4.5,
      found: 4.7,
      difference: 0.2,
      details: { first: 'pitchRadiiMm', second: 'centreDistanceMm' },
      working: [
        { where: { driver: 'crown wheel', driven: 'ratchet wheel', pitchRadiiMm: 4.5 } },
        { where: { driver: 'crown wheel', driven: 'ratchet wheel', centreDistanceMm: 4.7 } },
      ],
      fields: [],
    })
    expect(judgement).not.toHaveProperty('details.centreDistanceMm')
  })

  it('lets half of the last digit of both diameters stand for the radii, and asks for all three sizes', () => {
    const winding = (...sizes: readonly string[]) => judge([printedDepth('crown wheel', 'ratchet wheel', sizes)], {})
    expect(winding('4.0', '5.0', '4.55').outcome).toBe('agrees')
    expect(winding('4.0', '5.0', '4.57')).toMatchObject({ outcome: 'doubtful', reason: 'centres-near' })
    for (const sizes of [
      ['', '5.0', '4.5'],
      ['4.0', '', '4.5'],
      ['4.0', '5.0', ''],
    ])
      expect(winding(...sizes)).toEqual({ outcome: 'cannot-check', missing: ['depths'] })
  })
})
