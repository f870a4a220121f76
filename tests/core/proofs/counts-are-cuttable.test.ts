import { expect, it } from 'vitest'
import { countsAreCuttable as proof } from '../../../core/proofs/counts-are-cuttable.ts'
import type { CaliberValues } from '../../../core/record/caliber.ts'
import { countKeys, cuttable } from '../../../core/trains/cuttable-counts.ts'
import { caliberOf } from '../../support/caliber-of.ts'

const judge = (values: CaliberValues) => proof.judge(caliberOf(values))

it('agrees with the counts that are stated, however few', () => {
  expect(judge({ centreWheel: 80, escapeTeeth: 15 })).toMatchObject({
    outcome: 'agrees',
    reason: 'counts-cuttable',
    working: [],
    details: { count: 2 },
    fields: ['centreWheel', 'escapeTeeth'],
  })
})

it('disagrees over a count that nobody cuts, naming each', () => {
  expect(judge({ centreWheel: 80, thirdPinion: 4, fourthWheel: 230 })).toMatchObject({
    outcome: 'disagrees',
    reason: 'counts-few',
    stated: 4,
    found: 5,
    difference: 1,
    unit: 'teeth or leaves',
    working: [
      { formula: '5 − 4', where: { thirdPinion: 4 }, gives: 1 },
      { formula: '200 − 230', where: { fourthWheel: 230 }, gives: -30 },
    ],
    details: { field: 'thirdPinion', others: 1 },
    fields: ['thirdPinion', 'fourthWheel'],
  })
  expect(judge({ fourthWheel: 230 })).toMatchObject({ reason: 'counts-many', difference: -30 })
})

it('disagrees over a count that is not whole, or not positive', () => {
  expect(judge({ thirdWheel: 65.625 })).toMatchObject({
    outcome: 'disagrees',
    reason: 'counts-not-whole',
    found: null,
    working: [],
  })
  expect(judge({ thirdWheel: 0 })).toMatchObject({ outcome: 'disagrees', reason: 'counts-few' })
  expect(judge({ thirdWheel: -75 }).outcome).toBe('disagrees')
})

it.each(countKeys)('%s agrees up to both ends of its range and not a tooth beyond', (key) => {
  const [least, most] = cuttable(key) ?? [0, 0]
  expect([least - 1, least, most, most + 1].map((count) => judge({ [key]: count }).outcome)).toEqual([
    'disagrees',
    'agrees',
    'agrees',
    'disagrees',
  ])
})

it('cannot be checked, and says nothing, where no count is stated', () => {
  expect(judge({})).toEqual({ outcome: 'cannot-check', missing: countKeys })
  expect(proof.appliesTo?.({ beatRateVph: 18000 }, {})).toBe(false)
  expect(proof.appliesTo?.({ hourWheel: 40 }, {})).toBe(true)
})
