import { expect, test } from 'vitest'
import { playPlaceKeys } from '../../../core/bench/play-places.ts'
import { clockSideShake, playStandard } from '../../../core/bench/play-standard.ts'

test('a watch is held against what was found in fine watches, place by place', () => {
  expect(playStandard('watch', 'fourth', 'side', {})).toEqual({
    by: 'fine-watches',
    limits: { low: 0.015, high: 0.02 },
  })
  expect(playStandard('watch', 'lever', 'end', {})).toEqual({ by: 'fine-watches', limits: { low: 0.02, high: 0.03 } })
})

test('words without a figure stay words, and what is not in print is nothing', () => {
  expect(playStandard('watch', 'barrel', 'side', {})).toEqual({ by: 'words', words: 'just-free' })
  expect(playStandard('watch', 'barrelArbor', 'end', {})).toEqual({ by: 'words', words: 'merely-free' })
  for (const place of ['intermediate', 'fifth', 'sweep'] as const)
    expect(playStandard('watch', place, 'end', {})).toEqual({ by: 'nothing' })
})

test('the maker’s figure goes before every other', () => {
  const maker = { low: 0.01, high: 0.02 }
  for (const movement of ['watch', 'cylinder', 'clock'] as const)
    for (const place of playPlaceKeys)
      expect(playStandard(movement, place, 'side', { maker, pivotMm: 0.1 })).toEqual({ by: 'maker', limits: maker })
})

test('a cylinder’s pivots go by their size, and ask for it; its train is that of a watch', () => {
  expect(playStandard('cylinder', 'balance', 'side', { pivotMm: 0.12 })).toEqual({
    by: 'cylinder-pivots',
    limits: { low: 0.12 / 6, high: Number.POSITIVE_INFINITY },
  })
  expect(playStandard('cylinder', 'balance', 'side', {})).toEqual({ by: 'pivot-wanted' })
  expect(playStandard('cylinder', 'balance', 'end', {})).toMatchObject({ by: 'fine-watches' })
  expect(playStandard('cylinder', 'third', 'side', { pivotMm: 0.12 })).toMatchObject({ by: 'fine-watches' })
})

test('a clock has one figure for the side-shake of pivots in its plates, and none along the arbor', () => {
  expect(playStandard('clock', 'escape', 'side', {})).toEqual({ by: 'clock-pivots', limits: clockSideShake })
  expect(playStandard('clock', 'escape', 'end', {})).toEqual({ by: 'nothing' })
  expect(playStandard('clock', 'lever', 'side', {})).toEqual({ by: 'clock-pivots', limits: clockSideShake })
  for (const place of ['barrel', 'balance'] as const)
    expect(playStandard('clock', place, 'side', {})).toEqual({ by: 'nothing' })
})
