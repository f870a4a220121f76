import { expect, test } from 'vitest'
import type { CaliberValues, Depth } from '../../../core/record/caliber.ts'
import { customaryCost } from '../../../core/trains/customary-cost.ts'
import type { CountKey } from '../../../core/trains/cuttable-counts.ts'
import { caliberOf } from '../../support/caliber-of.ts'

const train = {
  centreWheel: 80,
  thirdPinion: 10,
  thirdWheel: 75,
  fourthPinion: 10,
  fourthWheel: 80,
  escapePinion: 8,
  escapeTeeth: 15,
} as const satisfies CaliberValues
const all: readonly CountKey[] = Object.keys(train) as CountKey[]
const cost = (values: CaliberValues, keys = all, depths: readonly Depth[] = []) =>
  customaryCost(values, { ...caliberOf({}).lists, depths }, new Set(keys), true)

test('customary leaves come before others, and usual teeth before unusual ones', () => {
  expect(cost(train)).toBeLessThan(cost({ ...train, thirdWheel: 135, fourthPinion: 18 }))
  expect(cost(train)).toBeLessThan(cost({ ...train, fourthWheel: 90, escapePinion: 9 }))
  expect(cost({ ...train, fourthWheel: 70, escapePinion: 7 })).toBeLessThan(
    cost({ ...train, fourthWheel: 150, escapePinion: 15 }),
  )
})

test('15 escape teeth come first, then 16', () => {
  const teeth = [15, 16, 17, 23, 33].map((escapeTeeth) => cost({ ...train, escapeTeeth }))
  expect(teeth).toEqual([...teeth].sort((a, b) => a - b))
})

test('eight by seven and a half comes before other ways to sixty', () => {
  expect(cost(train)).toBeLessThan(cost({ ...train, centreWheel: 75, thirdWheel: 80 }))
  expect(cost(train)).toBeLessThan(cost({ ...train, centreWheel: 100, thirdWheel: 60 }))
})

test('a motion work of 3 by 4 comes first', () => {
  const keys: readonly CountKey[] = ['minuteWheel', 'hourWheel']
  const work = { cannonPinion: 12, minutePinion: 10 }
  const usual = cost({ ...work, minuteWheel: 36, hourWheel: 40 }, keys)
  expect(usual).toBeLessThan(cost({ ...work, minuteWheel: 30, hourWheel: 48 }, keys))
  expect(usual).toBeLessThan(cost({ ...work, minuteWheel: 72, hourWheel: 20 }, keys))
})

test('sizes that do not fit outweigh what is customary', () => {
  // Pitch diameters of 72 over 9, module 0.12.
  const depths = [{ driver: 'third wheel', driven: 'fourth pinion', driverPitchMm: 8.64, drivenPitchMm: 1.08 }]
  const keys: readonly CountKey[] = ['thirdWheel', 'fourthPinion']
  expect(cost({ ...train, thirdWheel: 72, fourthPinion: 9 }, keys, depths)).toBeLessThan(cost(train, keys, depths))
})

test('the pair whose module fits its measured neighbours comes first', () => {
  const depths = [
    { driver: 'centre wheel', driven: 'third pinion', driverPitchMm: 11.5 },
    { driver: 'third wheel', driven: 'fourth pinion', driverPitchMm: 8.62, drivenPitchMm: 1.15 },
    { driver: 'fourth wheel', driven: 'escape pinion', driverPitchMm: 10.4 },
  ]
  const keys: readonly CountKey[] = ['thirdWheel', 'fourthPinion']
  // By the neighbours the module lies between 0.144 and 0.130: 60 on 8 gives 0.144, 75 on 10 gives 0.115.
  const eight = { ...train, thirdWheel: 60, fourthPinion: 8 }
  expect(cost(train, keys)).toBeLessThan(cost(eight, keys))
  expect(cost(eight, keys, depths)).toBeLessThan(cost(train, keys, depths))
})

test('an escape pinion of 8, 7 or 6 comes before one of 10', () => {
  const keys: readonly CountKey[] = ['fourthWheel', 'escapePinion']
  const [eight, seven, six, ten] = [8, 7, 6, 10].map((leaves) =>
    cost({ ...train, fourthWheel: 10 * leaves, escapePinion: leaves }, keys),
  )
  expect([eight, seven, six, ten]).toEqual([eight, seven, six, ten].sort((a = 0, b = 0) => a - b))
})
