import fc from 'fast-check'
import { expect, it } from 'vitest'
import { springCoils } from '../../../core/formulas/barrel.ts'
import { proveCaliber } from '../../../core/proofs/prove.ts'
import type { CaliberValues } from '../../../core/record/caliber.ts'
import { caliberOf } from '../../support/caliber-of.ts'

/** Last pairs for a fourth arbor that turns once a minute, with 15 escape teeth: n / 1800 (customary counts, from memory). */
const lastPairs: readonly (readonly [rate: number, wheel: number, pinion: number])[] = [
  [14_400, 56, 7],
  [16_200, 63, 7],
  [18_000, 70, 7],
  [18_000, 80, 8],
  [19_800, 66, 6],
  [21_600, 84, 7],
  [28_800, 96, 6],
]
const pairs = [
  [64, 8, 60, 8],
  [80, 10, 75, 10],
] as const
const motions = [
  [12, 36, 10, 40],
  [10, 40, 12, 36],
  [12, 48, 12, 36],
] as const
const hundredths = (mm: number) => Math.round(mm * 100) / 100

/** A movement as a maker would design it: every figure follows from the others. */
const soundValues = fc
  .record({
    last: fc.constantFrom(...lastPairs),
    pair: fc.constantFrom(...pairs),
    motion: fc.constantFrom(...motions),
    barrel: fc.constantFrom([80, 10], [72, 10], [78, 12], [84, 12]),
    insideMm: fc.integer({ min: 80, max: 170 }).map((tenths) => tenths / 10),
    barrelToThickness: fc.integer({ min: 80, max: 98 }),
    fill: fc.integer({ min: 43, max: 57 }).map((percent) => percent / 100),
    heightMm: fc.integer({ min: 80, max: 240 }).map((number) => number / 100),
    firstYear: fc.integer({ min: 1911, max: 1960 }),
  })
  .map(({ last, pair, motion, barrel, insideMm, barrelToThickness, fill, heightMm, firstYear }): CaliberValues => {
    const [beatRateVph, fourthWheel, escapePinion] = last
    const [centreWheel, thirdPinion, thirdWheel, fourthPinion] = pair
    const [cannonPinion, minuteWheel, minutePinion, hourWheel] = motion
    const [barrelTeeth = 80, centrePinion = 10] = barrel
    const barrelArborMm = hundredths(insideMm / 3)
    const springThicknessMm = Math.round((insideMm / barrelToThickness) * 200) / 200
    const free = (Math.PI * (insideMm ** 2 - barrelArborMm ** 2)) / 4
    const springLengthMm = Math.round((fill * free) / springThicknessMm)
    const { turns } = springCoils({ barrelInsideMm: insideMm, barrelArborMm, springThicknessMm, springLengthMm })
    return {
      firstYear,
      lastYear: firstYear + 10,
      escapement: 'lever',
      liftAngleDeg: 50,
      secondsDisplay: 'small',
      shape: 'round',
      hourHandMm: 1.5,
      minuteHandMm: 0.9,
      secondsHandMm: 0.25,
      ...{ beatRateVph, barrelTeeth, centrePinion, centreWheel, thirdPinion, thirdWheel, fourthPinion, fourthWheel },
      ...{ escapePinion, escapeTeeth: 15, cannonPinion, minuteWheel, minutePinion, hourWheel },
      ...{ barrelInsideMm: insideMm, barrelArborMm, barrelDepthMm: hundredths(heightMm + 0.1) },
      ...{ springHeightMm: heightMm, springThicknessMm, springLengthMm },
      goingHours: Math.floor((turns * barrelTeeth) / centrePinion / 1.1),
    }
  })

const outcomesOf = (values: CaliberValues) =>
  proveCaliber(caliberOf(values)).flatMap(({ proof, judgement: { outcome } }) =>
    outcome === 'disagrees' || outcome === 'doubtful' || outcome === 'outside-range' ? [`${proof.id}: ${outcome}`] : [],
  )

it('finds nothing wrong or doubtful in a movement whose figures follow from each other', () => {
  fc.assert(
    fc.property(soundValues, (values) => {
      expect(outcomesOf(values)).toEqual([])
    }),
    { numRuns: 300 },
  )
})

const bound = [
  ...['centreWheel', 'thirdPinion', 'thirdWheel', 'fourthPinion', 'fourthWheel', 'escapePinion', 'escapeTeeth'],
  ...['cannonPinion', 'minuteWheel', 'minutePinion', 'hourWheel'],
] as (keyof CaliberValues)[]

it('finds every single count that is one off in a train or motion work that states what it gives', () => {
  fc.assert(
    fc.property(soundValues, fc.constantFrom(...bound), fc.constantFrom(1, -1), (values, key, off) => {
      const wrong = { ...values, [key]: Number(values[key]) + off }
      expect(outcomesOf(wrong).some((found) => found.endsWith('disagrees'))).toBe(true)
    }),
    { numRuns: 300 },
  )
})
