import { expect, test } from 'vitest'
import { isBlankLine, readListLine } from '../../../core/record/read-list-line.ts'

test('a line is read by its columns, and each cell at fault is named', () => {
  expect(readListLine('jewels', { place: 'balance', kind: 'hole', count: '2' })).toEqual({
    ok: true,
    line: { place: 'balance', kind: 'hole', count: 2 },
  })
  expect(readListLine('jewels', { place: 'balance', count: '2' })).toMatchObject({
    ok: false,
    problems: [{ column: 'kind', problem: { code: 'missing-cell' } }],
  })
  expect(isBlankLine({ place: ' ', after: [] })).toBe(true)
})

test('a length keeps how it was printed, for its rounding', () => {
  expect(
    readListLine('depths', { driver: 'third wheel', driven: 'fourth pinion', driverPitchMm: '8.620' }),
  ).toMatchObject({
    ok: true,
    line: { driverPitchMm: 8.62, quantities: { driverPitchMm: { value: 8.62, unit: 'mm', halfStep: 0.0005 } } },
  })
})
