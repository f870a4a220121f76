import { describe, expect, it } from 'vitest'
import { answered, fileOf, libraryFile } from '../electron/terminal/run-captured.ts'

/*
 * Published and derived springs as they would be entered in a file and asked for in the terminal.
 * Grades: P, published and read; D, derived: certain arithmetic with nothing to cite.
 */
const notebook = 'GitHub jes/notes, 20231221.md'

type Figures = Readonly<Record<string, unknown>>
interface Fits {
  readonly fits: readonly Figures[]
}
interface Estimates {
  readonly estimates: readonly Figures[]
}
interface Candidates {
  readonly candidates: readonly Figures[]
}
interface Proved {
  readonly calibers: readonly { readonly proofs: readonly Figures[] }[]
}

const file = (fields: Figures, more: Figures = {}) =>
  fileOf({ ...libraryFile({ maker: 'From a book', designation: 'one', fields }), ...more })

describe('a pin-pallet pocket watch whose counts were taken', () => {
  const counts = { barrelTeeth: 58, centrePinion: 8, centreWheel: 60, thirdPinion: 8, thirdWheel: 48, fourthPinion: 6 }
  const watch = { ...counts, fourthWheel: 48, escapePinion: 6, escapeTeeth: 15, beatRateVph: '14,400' }
  const wound = { ...watch, secondsDisplay: 'small', stopWorkTurns: 5.5, goingHours: '40 h' }

  it(`R1: 58 to 8 are 7.25 h a turn, and 5.5 turns last 39.875 h, noted as 40 (${notebook}; P, the run assumed there)`, async () => {
    const { status, document } = await answered<Proved>('prove', file(wound))
    const of = (id: string) => document.calibers[0]?.proofs.find(({ proof }) => proof === id)
    expect(of('going-hours-follow-spring')).toMatchObject({
      outcome: 'agrees',
      stated: 40,
      found: 39.875,
      difference: -0.125,
    })
    expect(of('beat-rate-follows-train')).toMatchObject({ outcome: 'agrees', found: 14400, difference: 0 })
    expect(of('seconds-hand-turns-once-a-minute')).toMatchObject({ outcome: 'agrees', found: 60 })
    expect(status).toBe(0)
    const fit = await answered<Fits>('fit', file(wound))
    expect(fit.document.fits).toMatchObject([{ hoursPerTurn: 7.25, goingHours: 39.875, turns: null, fill: null }])
  })

  it(`R1: at 46 h the same turns fall short by more than rounding explains (${notebook}; the hours are ours)`, async () => {
    const { status, document } = await answered<Proved>('prove', file({ ...wound, goingHours: 46 }))
    expect(document.calibers[0]?.proofs).toContainEqual(
      expect.objectContaining({ proof: 'going-hours-follow-spring', outcome: 'disagrees', difference: -6.125 }),
    )
    expect(status).toBe(1)
  })
})

describe('barrels that were reckoned apart from this code', () => {
  it.each([
    ['F2', [12, 4, 0.12, 400], { fill: 0.47746, coilsDown: 12.0663, coilsWound: 19.9231, turns: 7.8568 }],
    ['F5', [16, 5, 0.18, 480], { fill: 0.47622, coilsDown: 10.8813, coilsWound: 18.3869, turns: 7.5056 }],
    ['F9', [20, 7, 0.25, 551.35], { fill: 0.5, coilsDown: 10.0334, coilsWound: 15.9666, turns: 5.9333 }],
  ])('%s: fit gives coils, turns and fill to the last printed digit (D)', async (_id, sizes, figures) => {
    const [barrelInsideMm, barrelArborMm, springThicknessMm, springLengthMm] = sizes
    const { document } = await answered<Fits>(
      'fit',
      file({ barrelInsideMm, barrelArborMm, springThicknessMm, springLengthMm }),
    )
    // The vectors hold to 0.0001; the length of F9 is rounded.
    for (const [key, figure] of Object.entries(figures))
      expect(Math.abs(Number(document.fits[0]?.[key]) - figure)).toBeLessThanOrEqual(0.0001)
  })

  it.each([
    ['S2', 11.5, 3.6, 7.5, { thicknessMm: 0.13, lengthMm: 360.35, turns: 7.468 }, [0.12945, 361.88]],
    ['S4', 14, 4.6, 6.5, { thicknessMm: 0.17, lengthMm: 403.88, turns: 6.589 }, [0.17233, 398.41]],
    ['S5', 18, 6, 6, { thicknessMm: 0.235, lengthMm: 481.27, turns: 6.027 }, [0.23607, 479.09]],
  ])(
    '%s: lost-spring rounds to the stock step and reckons again (D)',
    async (_id, inside, arbor, turns, rounded, exact) => {
      const barrel = file({ barrelInsideMm: inside, barrelArborMm: arbor })
      const { document } = await answered<Estimates>('lost-spring', barrel, '--turns', String(turns))
      const [estimate] = document.estimates
      expect(estimate?.thicknessMm).toBe(rounded.thicknessMm)
      expect(estimate?.lengthMm).toBeCloseTo(rounded.lengthMm, 2)
      expect(estimate?.turns).toBeCloseTo(rounded.turns, 3)
      const [thicknessMm = 0, lengthMm = 0] = exact
      expect(estimate?.exact).toEqual({
        thicknessMm: expect.closeTo(thicknessMm, 5),
        lengthMm: expect.closeTo(lengthMm, 2),
      })
    },
  )
})

describe('springs that stand in for another', () => {
  const barrel = { barrelInsideMm: '10,5', barrelArborMm: 3.4, barrelDepthMm: 1.6, barrelTeeth: 80, centrePinion: 10 }
  const specified = { springHeightMm: '1.50', springThicknessMm: '0,105', springLengthMm: 360 }

  it.each([
    ['a', 1.5, 0.11, 360, { fill: 0.5109, turns: 7.762, torqueRate: 1.1498, torqueFullWind: 1.0975 }],
    ['b', 1.5, 0.105, 340, { fill: 0.4606, turns: 8.097, torqueRate: 1.0588, torqueFullWind: 1 }],
    ['c', 1.45, 0.105, 360, { fill: 0.4877, turns: 8.131, torqueRate: 0.9667, torqueFullWind: 0.9667 }],
    ['d', 1.5, 0.1, 380, { fill: 0.4903, turns: 8.539, torqueRate: 0.8184, torqueFullWind: 0.907 }],
  ])('%s: springs gives turns, hours and both ratios of torque (D)', async (_id, ...row) => {
    const [heightMm, thicknessMm, lengthMm, figures] = row
    const springs = [{ supplierRef: 'tray 1', heightMm, thicknessMm, lengthMm }]
    const { document } = await answered<Candidates>(
      'springs',
      file({ ...barrel, ...specified }, { springs }),
      '--caliber',
      'one',
    )
    const [candidate] = document.candidates
    const { turns, ...shares } = figures
    for (const [key, figure] of Object.entries(shares)) expect(candidate?.[key]).toBeCloseTo(figure, 4)
    expect(candidate?.turns).toBeCloseTo(turns, 3)
    expect(candidate?.goingHours).toBe(8 * Number(candidate?.turns))
    expect(candidate?.heightClearanceMm).toBe(Number((1.6 - heightMm).toFixed(2)))
  })
})
