import { expect, it } from 'vitest'
import { proofs } from '../../../core/proofs/index.ts'
import { judgeProof } from '../../../core/proofs/prove.ts'
import type { CaliberValues, JewelGroup } from '../../../core/record/caliber.ts'
import { caliberOf } from '../../support/caliber-of.ts'
import { caliberPrinted, soundWatch } from '../../support/caliber-printed.ts'

/** Numbers to the fourth decimal, as far as the vectors are printed; all else as it is. */
const rounded = (_key: string, value: unknown): unknown =>
  typeof value === 'number' ? Math.round(value * 1e4) / 1e4 : value

/** All that a proof finds, to the last number and name; pages, sheets and the terminal show every one of them. */
const inFull = (id: string, values: CaliberValues, jewels: readonly JewelGroup[] = []): unknown => {
  const proof = proofs.find((one) => one.id === id)
  if (proof === undefined) throw new Error(`no proof ${id}`)
  return JSON.parse(JSON.stringify(judgeProof(proof, caliberOf(values, jewels)), rounded))
}

// Its barrel is vector F5 of research/mainsprings.md, section 1.5 (derived there; D): 10.8813 and 18.3869 coils.
const watch = caliberPrinted(soundWatch).values
const barrel = { barrelInsideMm: 16, barrelArborMm: 5, springThicknessMm: 0.18, springLengthMm: 480 }

it('the beat rate, and every arbor on the way to it', () => {
  const arbor = (formula: string, gives: number | string, unit = 'turns an hour') => ({
    formula,
    where: {},
    gives,
    unit,
  })
  expect(inFull('beat-rate-follows-train', watch)).toEqual({
    outcome: 'agrees',
    stated: 18000,
    found: 18000,
    unit: 'vph',
    difference: 0,
    allowed: 0.5,
    working: [
      {
        formula: '80/10 × 75/10 × 80/8 × 2 × 15',
        where: {
          centreWheel: 80,
          thirdPinion: 10,
          thirdWheel: 75,
          fourthPinion: 10,
          fourthWheel: 80,
          escapePinion: 8,
          escapeTeeth: 15,
        },
        gives: 18000,
      },
      arbor('barrel: 1 ÷ 84/14', '1/6', 'turn an hour'),
      arbor('centre arbor', 1, 'turn an hour'),
      arbor('third arbor: 80/10', 8),
      arbor('fourth arbor: 8 × 75/10', 60),
      arbor('escape arbor: 60 × 80/8', 600),
    ],
    reason: 'rate-agrees',
    details: { secondsPerDay: 0 },
  })
})

it('a rate that is nearly the stated one, and the hours of a slower centre arbor among its numbers', () => {
  expect(inFull('beat-rate-follows-train', { ...watch, beatRateVph: 18010 })).toMatchObject({
    outcome: 'doubtful',
    difference: -10,
    reason: 'rate-near',
  })
  expect(inFull('beat-rate-follows-train', { ...watch, hoursPerCentreTurn: 2, beatRateVph: 9000 })).toHaveProperty(
    'working.0.where.hoursPerCentreTurn',
    2,
  )
})

it('the seconds hand on the fourth arbor', () => {
  expect(inFull('seconds-hand-turns-once-a-minute', watch)).toEqual({
    outcome: 'agrees',
    stated: 60,
    found: 60,
    unit: 'turns an hour',
    difference: 0,
    allowed: 0,
    working: [
      {
        formula: '80/10 × 75/10',
        where: { centreWheel: 80, thirdPinion: 10, thirdWheel: 75, fourthPinion: 10 },
        gives: 60,
      },
    ],
    reason: 'seconds-true',
    details: { arbor: 'fourth', found: 60 },
  })
})

it('the seconds hand on a sweep pinion, with the hours of a slower centre arbor', () => {
  const sweep = { centreWheel: 80, thirdPinion: 10, sweepDriver: 75, sweepPinion: 10, hoursPerCentreTurn: 2 }
  expect(inFull('seconds-hand-turns-once-a-minute', { ...sweep, secondsDisplay: 'centre-indirect' })).toEqual({
    outcome: 'disagrees',
    stated: 60,
    found: 30,
    unit: 'turns an hour',
    difference: -30,
    allowed: 0,
    working: [{ formula: '80/10 × 75/10 ÷ 2', where: sweep, gives: 30 }],
    reason: 'seconds-false',
    details: { arbor: 'sweep', found: 30 },
  })
})

it.each([
  [61, 1],
  [59, 1],
  [120, 2],
])('%i over %i turns an hour of the hand are not sixty', (thirdWheel, fourthPinion) => {
  const train = { centreWheel: 8, thirdPinion: 8, thirdWheel, fourthPinion }
  expect(inFull('seconds-hand-turns-once-a-minute', { ...train, secondsDisplay: 'small' })).toMatchObject({
    outcome: thirdWheel / fourthPinion === 60 ? 'agrees' : 'disagrees',
    difference: thirdWheel / fourthPinion - 60,
  })
})

it('the hour hand', () => {
  const work = { cannonPinion: 12, minuteWheel: 36, minutePinion: 10, hourWheel: 40 }
  const expected = {
    outcome: 'agrees',
    stated: 12,
    found: 12,
    unit: 'turns to one',
    difference: 0,
    allowed: 0,
    working: [{ formula: '36/12 × 40/10', where: work, gives: 12 }],
    reason: 'hour-hand-true',
    details: { found: 12 },
  }
  expect(inFull('hour-hand-follows-minute-hand', work)).toEqual(expected)
  expect(inFull('hour-hand-follows-minute-hand', { ...work, hourWheel: 38 })).toEqual({
    ...expected,
    outcome: 'disagrees',
    found: 11.4,
    difference: -0.6,
    working: [{ formula: '36/12 × 38/10', where: { ...work, hourWheel: 38 }, gives: 11.4 }],
    reason: 'hour-hand-false',
    details: { found: 11.4 },
  })
})

it('the fill of the barrel, with a slipping bridle and without', () => {
  const expected = {
    outcome: 'agrees',
    stated: null,
    found: 0.4762,
    unit: 'of the free space',
    difference: -0.0238,
    allowed: 0.1,
    working: [{ formula: '4 × 480 × 0.18 ÷ (π × (16² − 5²))', where: barrel, gives: 0.4762 }],
    reason: 'fill-usual',
  }
  expect(inFull('spring-fills-barrel', barrel)).toEqual(expected)
  const bridled: CaliberValues = { ...barrel, springEnd: 'slipping-bridle', bridleThicknessMm: 0.5 }
  expect(inFull('spring-fills-barrel', bridled)).toEqual({
    ...expected,
    found: 0.55,
    difference: 0.05,
    working: [
      {
        formula: '4 × 480 × 0.18 ÷ (π × (15² − 5²))',
        where: { ...barrel, insideWithinBridleMm: 15 },
        gives: 0.55,
      },
    ],
  })
})

it('the hours that the spring gives', () => {
  expect(inFull('going-hours-follow-spring', watch)).toEqual({
    outcome: 'agrees',
    stated: 40,
    found: 45.0335,
    unit: 'h',
    difference: 5.0335,
    allowed: 8,
    working: [
      {
        formula: '18.387 coils wound − 10.881 let down',
        where: { ...barrel, wound: 18.3869, down: 10.8813 },
        gives: 7.5056,
      },
      { formula: '84/14', where: { barrelTeeth: 84, centrePinion: 14 }, gives: 6 },
      { formula: '7.506 × 6', where: { turns: 7.5056, hoursPerTurn: 6 }, gives: 45.0335 },
    ],
    reason: 'hours-agree',
    details: { turns: 7.5056, hoursPerTurn: 6, limit: 'spring' },
  })
})

it('the hours that the stop-work leaves, of a slower centre arbor', () => {
  const stopped = { goingHours: 40, barrelTeeth: 80, centrePinion: 10, stopWorkTurns: 5, hoursPerCentreTurn: 1.25 }
  expect(inFull('going-hours-follow-spring', stopped)).toEqual({
    outcome: 'disagrees',
    stated: 40,
    found: 50,
    unit: 'h',
    difference: 10,
    allowed: 0.5,
    working: [
      { formula: '80/10 × 1 1/4', where: { barrelTeeth: 80, centrePinion: 10 }, gives: 10 },
      { formula: '5 × 10', where: { turns: 5, hoursPerTurn: 10 }, gives: 50 },
    ],
    reason: 'hours-over',
    details: { turns: 5, hoursPerTurn: 10, limit: 'stop-work' },
  })
})

it('stop-work as many turns as the spring limits them, more leaves them to the spring', () => {
  const limit = (stopWorkTurns: number) => inFull('going-hours-follow-spring', { ...watch, stopWorkTurns })
  expect(limit(7.5)).toMatchObject({ details: { limit: 'stop-work', turns: 7.5 } })
  expect(limit(7.51)).toMatchObject({ details: { limit: 'spring', turns: 7.5056 } })
})

it.each([
  [6, 'agrees', 0.5],
  [5.5, 'agrees', 0.5],
  [5.4, 'disagrees', 0.5],
  [6.6, 'disagrees', 0.5],
])('%d h against 6 of stop-work: half an hour is borne, however short the going', (goingHours, outcome, allowed) => {
  const short = { barrelTeeth: 60, centrePinion: 10, stopWorkTurns: 1 }
  expect(inFull('going-hours-follow-spring', { ...short, goingHours })).toMatchObject({ outcome, allowed })
})

it('the length of the spring', () => {
  expect(inFull('spring-length-follows-barrel', watch)).toEqual({
    outcome: 'agrees',
    stated: 480,
    found: 503.9638,
    unit: 'mm',
    difference: 23.9638,
    allowed: 100.7928,
    working: [
      {
        formula: 'π × (16² − 5²) ÷ (8 × 0.18)',
        where: { barrelInsideMm: 16, barrelArborMm: 5, springThicknessMm: 0.18 },
        gives: 503.9638,
      },
      { formula: '503.964 − 480', where: { springLengthMm: 480 }, gives: 23.9638 },
      { formula: '7.518 − 7.506', where: { mostTurns: 7.5182, turns: 7.5056 }, gives: 0.0126 },
    ],
    reason: 'length-best',
    details: { mostTurns: 7.5182, lostTurns: 0.0126, lostPercent: 0.1674, suitingThicknessMm: 0.189 },
  })
})

it('the bend round the arbor', () => {
  const sizes = { barrelArborMm: 5, springThicknessMm: 0.18 }
  expect(inFull('spring-bends-round-arbor', sizes)).toEqual({
    outcome: 'agrees',
    stated: null,
    found: 27.7778,
    unit: 'thicknesses',
    difference: 0,
    allowed: 0,
    working: [
      { formula: '5 ÷ 0.18', where: sizes, gives: 27.7778 },
      { formula: '100 × 0.18 ÷ (5 + 0.18)', where: { ...sizes, unit: '%' }, gives: 3.4749 },
    ],
    reason: 'bend-usual',
    details: { strainPercent: 3.4749, usualFrom: 25, usualTo: 32, least: 20 },
  })
})

it('the height of the spring', () => {
  expect(inFull('spring-stands-within-barrel', { barrelDepthMm: 2.6, springHeightMm: 2.5 })).toEqual({
    outcome: 'agrees',
    stated: 2.5,
    found: 2.6,
    unit: 'mm',
    difference: 0.1,
    allowed: 0.25,
    working: [{ formula: '2.6 − 2.5', where: { barrelDepthMm: 2.6, springHeightMm: 2.5 }, gives: 0.1 }],
    reason: 'stands-free',
    details: { usualMm: 0.1 },
  })
})

it('the jewels, two lines of one place taken together', () => {
  const jewels = [
    { place: 'balance', kind: 'hole', count: 2 },
    { place: 'balance', kind: 'hole', count: 1 },
    { place: 'pallet', kind: 'hole', count: 2 },
  ]
  expect(inFull('jewels-add-up', { jewelsStated: 7 }, jewels)).toEqual({
    outcome: 'disagrees',
    stated: 7,
    found: 5,
    unit: 'jewels',
    difference: -2,
    allowed: 0,
    working: [{ formula: '2 + 1 + 2', where: { 'balance hole': 3, 'pallet hole': 2 }, gives: 5 }],
    reason: 'jewels-short',
  })
})
