import { describe, expect, it } from 'vitest'
import { everyPivotIsOiledOrLeftDry as proof } from '../../../core/proofs/every-pivot-is-oiled-or-left-dry.ts'
import type { CaliberValues, OilingPoint } from '../../../core/record/caliber.ts'
import { caliberWithLists } from '../../support/caliber-with-lists.ts'

const values: CaliberValues = {
  escapement: 'lever',
  winding: 'stem',
  centreWheel: 80,
  thirdWheel: 75,
  fourthWheel: 80,
  escapeTeeth: 15,
}
const oiled = [
  'mainspring',
  'barrel arbor',
  'centre pivots',
  'third pivots',
  'fourth pivots',
  'escape pivots',
  'pallet stones',
  'balance pivots',
  'cannon pinion',
  'keyless work',
]
const line = (place: string, lubricant = 'oil'): OilingPoint => ({ place, lubricant })
const full = oiled.map((place) => line(place))
const judge = (lubrication: readonly OilingPoint[], stated: CaliberValues = values) =>
  proof.judge(caliberWithLists({ lubrication }, stated))

it('agrees where every place is oiled or marked as dry', () => {
  const dry = [line('pallet pivots', 'dry'), line('fork and impulse pin', 'none'), line('hairspring', '—')]
  expect(judge([...full, ...dry])).toMatchObject({
    outcome: 'agrees',
    reason: 'oiling-complete',
    stated: 10,
    found: 10,
    difference: 0,
  })
  expect(judge(full).outcome).toBe('agrees')
})

it('writes each place down with what goes there, known or not', () => {
  const judgement = judge([{ place: 'Zugfeder', lubricant: 'grease', amount: 'a film' }, line('rotor axle')])
  expect(judgement).toMatchObject({ outcome: 'doubtful', reason: 'oiling-left-out', found: 1 })
  expect(judgement.outcome === 'doubtful' && judgement.working).toEqual(
    expect.arrayContaining([
      { formula: 'mainspring', where: {}, gives: 'grease, a film' },
      { formula: 'barrel arbor', where: {}, gives: 'not listed' },
      { formula: 'rotor axle', where: {}, gives: 'oil' },
    ]),
  )
})

it.each(oiled)('doubts a list without %s, one place short being enough', (place) => {
  expect(judge(full.filter((each) => each.place !== place))).toMatchObject({
    outcome: 'doubtful',
    reason: 'oiling-left-out',
    difference: -1,
    allowed: 0,
  })
})

describe('what stays dry', () => {
  it('is the balance spring, and oil on it is wrong', () => {
    for (const place of ['hairspring', 'spiral', 'Unruhspirale', 'balansveer'])
      expect(judge([...full, line(place)])).toMatchObject({
        outcome: 'disagrees',
        reason: 'oiling-harms',
        details: { places: 'balance spring' },
      })
  })

  it('is most often pallet pivots, fork and train teeth, and oil there is doubtful', () => {
    for (const place of ['pallet pivots', 'impulse pin', 'train teeth'])
      expect(judge([...full, line(place)])).toMatchObject({ outcome: 'doubtful', reason: 'oiling-unusual' })
  })

  it('is the teeth of a detent escapement, which need not be listed', () => {
    const detent: CaliberValues = { ...values, escapement: 'detent' }
    const without = full.filter(({ place }) => place !== 'pallet stones')
    expect(judge(without, detent)).toMatchObject({ outcome: 'agrees', stated: 9 })
    expect(judge([...without, line('escape teeth')], detent)).toMatchObject({ outcome: 'disagrees' })
    expect(judge([...without, line('escape teeth', 'dry')], detent)).toMatchObject({ outcome: 'agrees' })
  })

  it('is no pivot, but may be a treated mainspring', () => {
    const dry = (place: string) => judge([...full.filter((each) => each.place !== place), line(place, 'dry')])
    expect(dry('balance pivots')).toMatchObject({ outcome: 'doubtful', reason: 'oiling-left-dry' })
    expect(dry('mainspring').outcome).toBe('agrees')
  })
})

describe('what is asked for', () => {
  it('are only the arbors whose wheels are stated, and what the escapement and winding have', () => {
    const bare = ['mainspring', 'barrel arbor', 'escape pivots', 'balance pivots', 'cannon pinion'].map((each) =>
      line(each),
    )
    expect(judge(bare, {})).toMatchObject({ outcome: 'agrees', stated: 5 })
    expect(judge(bare, { thirdWheel: 75 }).outcome).toBe('doubtful')
    expect(judge(bare, { winding: 'key' }).outcome).toBe('agrees')
    expect(judge(bare, { winding: 'self-winding' }).outcome).toBe('doubtful')
    expect(judge(bare, { escapement: 'cylinder' })).toMatchObject({ details: { places: 'pallet faces' } })
  })

  it('are also intermediate, fifth and sweep pivots and a wall that a bridle slips on', () => {
    const more = (stated: CaliberValues) => judge(full, { ...values, ...stated })
    expect(more({ intermediateWheel: 60 })).toMatchObject({ details: { places: 'intermediate pivots' } })
    expect(more({ fifthWheel: 60 })).toMatchObject({ details: { places: 'fifth pivots' } })
    expect(more({ secondsDisplay: 'centre-indirect' })).toMatchObject({ details: { places: 'sweep pivots' } })
    expect(more({ springEnd: 'slipping-bridle' })).toMatchObject({ details: { places: 'barrel wall' } })
  })
})

it('cannot be checked without a list of oiling', () => {
  expect(judge([])).toEqual({ outcome: 'cannot-check', missing: ['lubrication'] })
})

it.each([
  ['lever', 'doubtful'],
  ['pin-lever', 'doubtful'],
  ['cylinder', 'doubtful'],
  ['verge', 'doubtful'],
  ['duplex', 'agrees'],
  ['detent', 'agrees'],
] as const)('asks for oil on the pallet faces of a %s or not: %s without it', (escapement, outcome) => {
  const without = full.filter(({ place }) => place !== 'pallet stones')
  expect(judge(without, { ...values, escapement }).outcome).toBe(outcome)
})

it('asks for sweep pivots where the sweep pinion is stated', () => {
  expect(judge(full, { ...values, sweepPinion: 10 })).toMatchObject({ details: { places: 'sweep pivots' } })
})

it('takes a place for oiled where one of two lines oils it, in either order', () => {
  const others = full.filter(({ place }) => place !== 'balance pivots')
  const two = [line('balance pivots', 'dry'), line('balance pivots', 'thin oil')]
  for (const lines of [two, two.toReversed()]) expect(judge([...others, ...lines]).outcome).toBe('agrees')
})

it('counts what is oiled as places, writes each down once, and names all that are left out', () => {
  expect(judge(full)).toMatchObject({ unit: 'places', details: { places: '' } })
  expect(judge(full)).toHaveProperty('working.length', 10)
  const short = full.filter(({ place }) => place !== 'third pivots' && place !== 'fourth pivots')
  expect(judge(short)).toMatchObject({ found: 8, difference: -2, details: { places: 'third pivots; fourth pivots' } })
  const dry = [...full.filter(({ place }) => place !== 'balance pivots'), line('balance pivots', 'dry')]
  expect(judge(dry)).toMatchObject({ found: 9, difference: -1 })
})
