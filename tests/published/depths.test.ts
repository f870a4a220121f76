import { describe, expect, it } from 'vitest'
import { centreDistance } from '../../core/formulas/centre-distance.ts'
import { circularPitch } from '../../core/formulas/circular-pitch.ts'
import { moduleOfWheel } from '../../core/formulas/module-of-wheel.ts'
import { wheelsShareAModule } from '../../core/proofs/wheels-share-a-module.ts'
import { readQuantity } from '../../core/quantities/read-quantity.ts'
import { furthestApart } from '../../core/trains/shared-module.ts'
import { caliberWithLists } from '../support/caliber-with-lists.ts'
import { printedDepth } from '../support/printed-depth.ts'

/*
 * Grades: A, the text was read and the figure computed again; B, read in an excerpt or at second hand; C, from memory;
 * D, constructed: certain arithmetic with nothing to cite. Printed values are kept as printed.
 */
const goodrich = 'W. L. Goodrich, The Modern Clock, 1905'
const dietzschold = 'C. Dietzschold, Die Turmuhren (year from memory, 1894)'
const playtner = 'H. R. Playtner, An Analysis of the Lever Escapement, 1910'

describe(`the centre distance shared out (${goodrich}, pp. 201–202; A)`, () => {
  it('G1: at 7 1/2 to 1 it is 8 1/2 parts, or 17 half parts of which the wheel has 15', () => {
    expect(centreDistance(2, 7.5, 1)).toBe(8.5)
    expect(centreDistance(2, 15, 2)).toBe(17)
  })

  it('G2: with 80 and 10 it is 9/8 of the wheel’s pitch radius', () => {
    expect(centreDistance(1, 80, 10) / (80 / 2)).toBe(9 / 8)
  })
})

describe(`wheels in inches (${goodrich}; A)`, () => {
  it('G3: 96 teeth on 3 in are 32 diametral pitch, and a pinion of 8 then measures 8/32 in (pp. 216–217)', () => {
    expect(1 / moduleOfWheel(3, 96)).toBe(32)
    expect(moduleOfWheel(8 / 32, 8)).toBe(moduleOfWheel(3, 96))
    // Two modules over the points: 3 2/32 and 10/32 in are printed.
    expect(3 + 2 * moduleOfWheel(3, 96)).toBe(3 + 2 / 32)
  })

  it('G4: 96 teeth on 3.25 in ask for a pinion of 8 of 0.2708 in; 0.270 is printed (p. 217)', () => {
    expect(8 * moduleOfWheel(3.25, 96)).toBeCloseTo(0.2708, 4)
    const depths = [printedDepth('centre wheel', 'third pinion', ['3.25 in', '0.270 in'])]
    const values = { centreWheel: 96, thirdPinion: 8 }
    // 0.270 is cut short and not rounded, and yet within the rounding of a wheel printed to a hundredth.
    expect(wheelsShareAModule.judge(caliberWithLists({ depths }, values)).outcome).toBe('agrees')
    // E14: 3 1/3 in nearly is printed for the wheel over its points, with 30 diametral pitch taken for 29.54.
    expect(3.25 + 2 / 30).toBeCloseTo(3.3167, 4)
  })

  it('G5, E15: the three wheels of a regulator are not quite of one cutter (p. 492)', () => {
    const wheel = (teeth: number, inches: string) => {
      const read = readQuantity('length', `${inches} in`)
      if (!read.ok) throw new Error(inches)
      return { name: inches, printed: read.quantity, modules: teeth }
    }
    const [first, second, third] = [wheel(144, '3.40'), wheel(96, '2.26'), wheel(90, '2.11')]
    const modules = [first, second, third].map(({ printed, modules }) => moduleOfWheel(printed.value, modules) / 25.4)
    expect(modules.map((inches) => inches.toFixed(5))).toEqual(['0.02361', '0.02354', '0.02344'])
    expect([144, 96, 90].map((teeth) => (teeth * (3.4 / 144)).toFixed(3))).toEqual(['3.400', '2.267', '2.125'])
    expect(furthestApart([first, second])?.gapMm).toBeLessThan(0)
    expect(furthestApart([first, third])?.gapMm).toBeGreaterThan(0)
    expect(furthestApart([first, second, third])).toMatchObject({ first: { name: '3.40' }, second: { name: '2.11' } })
    // In line at 2 1/2 in apart, as the text has the arbors, 90 teeth and 12 leaves ask for more than 0.0238 in.
    expect(centreDistance(0.0238, 198, 12)).toBeCloseTo(2.5, 2)
  })
})

describe(`tower clocks in millimetres (${dietzschold}; B)`, () => {
  interface Row {
    readonly counts: readonly [number, number]
    readonly pitch: readonly [string, string]
    readonly centres: string
    readonly module: number
    readonly pitchAlong: number
    readonly centresFound: number
    readonly outcome: string
  }
  const rows: readonly [string, Row][] = [
    [
      'G6 (p. 236): 120, where the scan reads 128, and 8',
      {
        counts: [120, 8],
        pitch: ['155.9', '10.4'],
        centres: '83.2',
        module: 1.3,
        pitchAlong: 4.1,
        centresFound: 83.15,
        outcome: 'agrees',
      },
    ],
    [
      'G7 (p. 245): 120 and 12, exact; 12.24 is printed for the pitch',
      {
        counts: [120, 12],
        pitch: ['467.76', '46.776'],
        centres: '257.268',
        module: 3.898,
        pitchAlong: 12.25,
        centresFound: 257.268,
        outcome: 'agrees',
      },
    ],
    [
      'G8, E20 (p. 245): 90 and 15, a tenth of a millimetre out; 10.11 is printed for the pitch',
      {
        counts: [90, 15],
        pitch: ['289.89', '48.32'],
        centres: '169.00',
        module: 3.221,
        pitchAlong: 10.12,
        centresFound: 169.105,
        outcome: 'doubtful',
      },
    ],
    [
      'G9 (p. 245): 60 and 30 of the winding, right; 19.19 is printed for the pitch',
      {
        counts: [60, 30],
        pitch: ['366.69', '183.34'],
        centres: '275.0',
        module: 6.111,
        pitchAlong: 19.2,
        centresFound: 275.015,
        outcome: 'agrees',
      },
    ],
  ]
  it.each(rows)('%s', (_id, { counts: [wheel, pinion], pitch, centres, module, pitchAlong, centresFound, outcome }) => {
    expect(moduleOfWheel(Number(pitch[0]), wheel)).toBeCloseTo(module, 2)
    expect(circularPitch(moduleOfWheel(Number(pitch[0]), wheel))).toBeCloseTo(pitchAlong, 1)
    expect((Number(pitch[0]) + Number(pitch[1])) / 2).toBeCloseTo(centresFound, 3)
    const depths = [printedDepth('centre wheel', 'third pinion', [...pitch, centres])]
    const values = { centreWheel: wheel, thirdPinion: pinion }
    expect(wheelsShareAModule.judge(caliberWithLists({ depths }, values)).outcome).toBe(outcome)
  })

  it('G8, E20: at the true 169.105 nothing is left to doubt', () => {
    const depths = [printedDepth('centre wheel', 'third pinion', ['289.89', '48.32', '169.105'])]
    const values = { centreWheel: 90, thirdPinion: 15 }
    expect(wheelsShareAModule.judge(caliberWithLists({ depths }, values)).outcome).toBe('agrees')
  })

  it('G6: the count of 128 that the scan reads is found wrong', () => {
    const depths = [printedDepth('centre wheel', 'third pinion', ['155.9', '10.4', '83.2'])]
    const values = { centreWheel: 128, thirdPinion: 8 }
    expect(wheelsShareAModule.judge(caliberWithLists({ depths }, values)).outcome).toBe('disagrees')
  })
})

describe(`the lever escapement (${playtner}; A)`, () => {
  it('G10: pallets over 60° of a wheel of 7.5 mm stand 4.33 mm from it (p. 23)', () => {
    // Plain geometry of two tangents: the radius over the cosine of half the angle.
    expect(7.5 / 2 / Math.cos(Math.PI / 6)).toBeCloseTo(4.33, 3)
  })

  it('G11: one degree on a diameter of 7.5 mm is 0.0655 mm, the pitch of a wheel of 360 (p. 4)', () => {
    expect(circularPitch(moduleOfWheel(7.5, 360))).toBeCloseTo(0.0655, 3)
  })
})

describe('constructed depths (D)', () => {
  it.each([
    [0.12, 75, 10, '9.00', '1.20', '5.10'],
    [0.13, 80, 10, '10.40', '1.30', '5.85'],
    [0.1, 64, 8, '6.40', '0.80', '3.60'],
    [0.09, 70, 7, '6.30', '0.63', '3.465'],
  ])('module %d, %d and %d', (module, wheel, pinion, wheelMm, pinionMm, centres) => {
    expect(moduleOfWheel(Number(wheelMm), wheel)).toBeCloseTo(module, 12)
    expect(moduleOfWheel(Number(pinionMm), pinion)).toBeCloseTo(module, 12)
    expect(centreDistance(module, wheel, pinion)).toBeCloseTo(Number(centres), 12)
    const depths = [printedDepth('third wheel', 'fourth pinion', [wheelMm, pinionMm, centres])]
    const values = { thirdWheel: wheel, fourthPinion: pinion }
    expect(wheelsShareAModule.judge(caliberWithLists({ depths }, values)).outcome).toBe('agrees')
  })
})
