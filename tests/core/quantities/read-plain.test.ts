import { expect, test } from 'vitest'
import { readAngle, readCount, readRatio } from '../../../core/quantities/read-plain.ts'

test('angles, counts and ratios are read with their unit or without', () => {
  expect(readAngle('52°')).toMatchObject({ quantity: { value: 52, unit: 'degree', halfStep: 0.5 } })
  expect(readCount('80 teeth')).toMatchObject({ quantity: { value: 80, unit: 'count', halfStep: 0 } })
  expect(readRatio('4 1/2 turns')).toMatchObject({ quantity: { value: 4.5, unit: 'ratio', halfStep: 0 } })
  expect(readCount('80 mm')).toMatchObject({ problem: { code: 'wrong-unit', unit: 'mm' } })
})
