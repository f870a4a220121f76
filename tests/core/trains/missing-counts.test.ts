import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { CaliberValues, Depth } from '../../../core/record/caliber.ts'
import { type CountKey, cuttable } from '../../../core/trains/cuttable-counts.ts'
import { findMissingCounts } from '../../../core/trains/missing-counts.ts'
import { caliberOf } from '../../support/caliber-of.ts'

const train = {
  beatRateVph: 18000,
  secondsDisplay: 'small',
  centreWheel: 80,
  thirdPinion: 10,
  thirdWheel: 75,
  fourthPinion: 10,
  fourthWheel: 80,
  escapePinion: 8,
  escapeTeeth: 15,
} as const satisfies CaliberValues
const trainKeys = [
  'centreWheel',
  'thirdPinion',
  'thirdWheel',
  'fourthPinion',
  'fourthWheel',
  'escapePinion',
  'escapeTeeth',
] as const
type TrainKey = (typeof trainKeys)[number]

const find = (values: CaliberValues, unknown?: readonly CountKey[], depths: readonly Depth[] = []) => {
  const { readings, lists } = caliberOf(values)
  return findMissingCounts({ values, readings, lists: { ...lists, depths } }, unknown)
}
const countsOf = (answer: ReturnType<typeof find>) => answer.solutions.map(({ counts }) => counts)
const without = (...keys: readonly string[]): CaliberValues =>
  Object.fromEntries(Object.entries(train).filter(([key]) => !keys.includes(key)))

/** Every cuttable count tried, by whole numbers alone: the rate to half a vibration, the seconds hand exactly. */
const bruteForce = (values: CaliberValues, unknown: readonly TrainKey[]): string[] => {
  const counts = Object.fromEntries(trainKeys.map((key) => [key, Number(values[key] ?? 0)])) as Record<TrainKey, number>
  const rate = values.beatRateVph ?? 0
  const found: string[] = []
  const turn = (at: number): void => {
    const key = unknown[at]
    if (key !== undefined) {
      const [low, high] = cuttable(key) ?? [0, -1]
      for (let count = low; count <= high; count += 1) {
        counts[key] = count
        turn(at + 1)
      }
      return
    }
    const toHand = counts.centreWheel * counts.thirdWheel
    const handBelow = counts.thirdPinion * counts.fourthPinion
    const seconds = unknown.some((each) => trainKeys.indexOf(each) < 4)
    if (values.secondsDisplay === 'small' && seconds && toHand !== 60 * handBelow) return
    const above = toHand * counts.fourthWheel * 2 * counts.escapeTeeth
    const below = handBelow * counts.escapePinion
    if (2 * Math.abs(above - rate * below) <= below) found.push(unknown.map((each) => counts[each]).join(' '))
  }
  turn(0)
  return found.sort()
}

const leaves = fc.integer({ min: 6, max: 14 })
const teeth = fc.integer({ min: 40, max: 100 })
const anyTrain = fc
  .record({
    centreWheel: teeth,
    thirdPinion: leaves,
    thirdWheel: teeth,
    fourthPinion: leaves,
    fourthWheel: teeth,
    escapePinion: leaves,
    escapeTeeth: fc.integer({ min: 12, max: 30 }),
    secondsDisplay: fc.constantFrom('small' as const, 'none' as const),
  })
  .map((counts): CaliberValues & { beatRateVph: number } => {
    const above = counts.centreWheel * counts.thirdWheel * counts.fourthWheel * 2 * counts.escapeTeeth
    const rate = above / (counts.thirdPinion * counts.fourthPinion * counts.escapePinion)
    return { ...counts, beatRateVph: Math.round(rate) }
  })

describe('complete enumeration', () => {
  test.each([
    [1, 100],
    [2, 40],
    [3, 4],
  ])(
    'of %i unknown counts finds what trying every cuttable count finds',
    (count, numRuns) => {
      const some = fc.shuffledSubarray([...trainKeys], { minLength: count, maxLength: count })
      // Two wheels and a third wheel are the most numbers to try: 6 million by brute force.
      fc.assert(
        fc.property(anyTrain, some, (values, unknown) => {
          const answer = find(values, unknown)
          expect(answer.complete).toBe(true)
          const found = countsOf(answer).map((counts) => unknown.map((key) => counts[key]).join(' '))
          expect(found.sort()).toEqual(bruteForce(values, unknown))
        }),
        { numRuns },
      )
    },
    60_000,
  )

  // Measured by `npm run bench`: two unknowns 0.3 ms (p99 3 ms), three 4 ms (p99 28 ms). The bounds are those asked for.
  test('takes under 20 ms for two unknowns and under 1 s for three', () => {
    const fastest = (keys: readonly CountKey[], values: CaliberValues) =>
      Math.min(
        ...[1, 2, 3].map(() => {
          const start = performance.now()
          find(values, keys)
          return performance.now() - start
        }),
      )
    const { secondsDisplay: _, ...rateAlone } = train
    for (const one of trainKeys)
      for (const other of trainKeys) if (one < other) expect(fastest([one, other], rateAlone)).toBeLessThan(20)
    expect(fastest(['centreWheel', 'thirdWheel', 'fourthWheel'], rateAlone)).toBeLessThan(1000)
    expect(fastest(['centreWheel', 'fourthWheel', 'escapeTeeth'], rateAlone)).toBeLessThan(1000)
  })
})

test('the counts that are absent are found, and those named though they are stated', () => {
  expect(countsOf(find(without('thirdWheel')))).toEqual([{ thirdWheel: 75 }])
  expect(countsOf(find(train, ['thirdWheel']))).toEqual([{ thirdWheel: 75 }])
  const { solutions, rests } = find(train, ['thirdWheel'])
  const [solution] = solutions
  expect(rests).toEqual(['seconds', 'rate'])
  expect(solution?.rate?.toFraction()).toBe('18000')
  expect(solution?.remarks).toEqual([])
  expect(solution?.working.map(({ formula, gives }) => `${formula} = ${gives}`)).toEqual([
    '80/10 × 75/10 = 60',
    '80/10 × 75/10 × 80/8 × 2 × 15 = 18000',
  ])
})

test('several answers stand with the most customary first, and with what would decide', () => {
  const answer = find(without('thirdWheel', 'fourthPinion'))
  expect(countsOf(answer).slice(0, 2)).toEqual([
    { thirdWheel: 75, fourthPinion: 10 },
    { thirdWheel: 60, fourthPinion: 8 },
  ])
  expect(answer.solutions).toHaveLength(10)
  expect(answer.decide.map(({ kind }) => kind)).toEqual(['count', 'distance'])
  expect(answer.decide[0]).toMatchObject({ key: 'fourthPinion', left: 1 })
})

test('a measured depth chooses among several answers', () => {
  const depth = { driver: 'third wheel', driven: 'fourth pinion' }
  const sizes = { ...depth, driverPitchMm: 9.0, drivenPitchMm: 1.2 }
  expect(find(without('thirdWheel', 'fourthPinion'), undefined, [sizes]).solutions).toHaveLength(10)
  // Without a seconds hand the rate leaves other ratios open, which the sizes shut out.
  const open = without('thirdWheel', 'fourthPinion', 'fourthWheel', 'secondsDisplay')
  const all = find(open)
  const measured = find(open, undefined, [sizes])
  expect(measured.solutions.length).toBeLessThan(all.solutions.length / 3)
  for (const { counts, remarks } of measured.solutions) {
    const ratio = (counts.thirdWheel ?? 0) / (counts.fourthPinion ?? 1)
    expect(Math.abs(7.5 / ratio - 1)).toBeLessThan(0.065)
    expect(remarks.some(({ code }) => code === 'sizes-differ')).toBe(Math.abs(7.5 / ratio - 1) > 0.015)
  }
  expect(countsOf(measured)[0]).toEqual({ thirdWheel: 75, fourthPinion: 10, fourthWheel: 80 })
})

test('sizes that speak against the only answer are remarked on, not obeyed', () => {
  const wrong = { driver: 'third wheel', driven: 'fourth pinion', driverPitchMm: 5, drivenPitchMm: 1 }
  const answer = find(without('thirdWheel'), undefined, [wrong])
  expect(countsOf(answer)).toEqual([{ thirdWheel: 75 }])
  expect(answer.solutions[0]?.remarks).toMatchObject([{ code: 'sizes-differ', clear: true }])
})

test('barrel teeth are bound by a depth alone, and otherwise by nothing', () => {
  expect(find(train, ['barrelTeeth'])).toMatchObject({
    unknown: [],
    solutions: [],
    unbound: [{ key: 'barrelTeeth', waitsFor: [] }],
  })
  const depth = { driver: 'barrel', driven: 'centre pinion', driverPitchMm: 11.2, drivenPitchMm: 1.4 }
  const answer = find({ ...train, centrePinion: 10 }, ['barrelTeeth'], [depth])
  expect(countsOf(answer)[0]).toEqual({ barrelTeeth: 80 })
})

test('a count that waits for another says for which; the others are found', () => {
  const answer = find({ ...without('fourthPinion'), cannonPinion: 12, minuteWheel: 36, minutePinion: 10 }, [
    'thirdWheel',
    'hourWheel',
  ])
  expect(answer.unbound).toEqual([{ key: 'thirdWheel', waitsFor: ['fourthPinion'] }])
  expect(countsOf(answer)).toEqual([{ hourWheel: 40 }])
})

test('a motion work with a 24-hour dial is 24 to one', () => {
  const work = { cannonPinion: 12, minuteWheel: 48, minutePinion: 10 }
  expect(countsOf(find(work))).toEqual([{ hourWheel: 30 }])
  expect(countsOf(find({ ...work, dialHours: '24' }))).toEqual([{ hourWheel: 60 }])
})

test('an indirect seconds hand gives its own pair', () => {
  const answer = find({ ...train, secondsDisplay: 'centre-indirect', sweepPinion: 8 })
  expect(countsOf(answer)).toEqual([{ sweepDriver: 60 }])
})

test('a fifth pair is found where it is named, and where one of its counts is stated', () => {
  const five = { ...train, beatRateVph: 36000, escapePinion: 10, fifthPinion: 10, fifthWheel: 25 }
  expect(countsOf(find(five, ['fifthWheel']))).toEqual([{ fifthWheel: 25 }])
  const { fifthWheel: _, ...rest } = five
  expect(countsOf(find(rest))).toEqual([{ fifthWheel: 25 }])
})

test('a centre arbor that does not turn once an hour is reckoned with', () => {
  const { secondsDisplay: _, ...rest } = train
  expect(countsOf(find({ ...rest, beatRateVph: 13500, hoursPerCentreTurn: 4 / 3 }, ['thirdWheel']))).toEqual([
    { thirdWheel: 75 },
  ])
})

test('too many answers to list are said to be incomplete, and the usual ones are listed', () => {
  const answer = find({ beatRateVph: 18000 })
  expect(answer.complete).toBe(false)
  expect(answer.solutions.length).toBeGreaterThan(0)
  expect(answer.decide).toEqual([])
  for (const { remarks } of answer.solutions) expect(remarks.filter(({ code }) => code === 'unusual-count')).toEqual([])
})

test('a train of two pairs that nothing fits still shows what comes near', () => {
  const clock = { beatRateVph: 5401, escapeTeeth: 30, thirdPinion: 8, escapePinion: 8, thirdWheel: 72 }
  const answer = find({ ...clock, beatRateVph: 5420 }, ['centreWheel'])
  expect(answer.solutions).toEqual([])
  expect(answer.nearest[0]?.counts).toEqual({ centreWheel: 80 })
})

test('nothing is looked for where nothing is missing, and nothing where nothing is known', () => {
  expect(find(train)).toMatchObject({ unknown: [], unbound: [], solutions: [], nearest: [], complete: true })
  expect(find({})).toMatchObject({ unknown: [], unbound: [], solutions: [] })
})
