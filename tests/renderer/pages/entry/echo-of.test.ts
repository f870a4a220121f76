import { expect, test } from 'vitest'
import type { MeasuredKind } from '../../../../core/fields/field.ts'
import { readQuantity } from '../../../../core/quantities/read-quantity.ts'
import { echoOf } from '../../../../renderer/pages/entry/echo-of.ts'

const echo = (kind: MeasuredKind, printed: string): string => {
  const read = readQuantity(kind, printed)
  return read.ok ? echoOf(kind, printed, read.quantity) : 'not read'
}

test.each([
  ['length', "17'''", '38.35 mm'],
  ['length', '18/100', '0.18 mm'],
  ['length', '1.2', ''],
  ['length', '0,18', ''],
  ['rate', '18000', ''],
  ['rate', '2.5 Hz', '18\u202f000 vph'],
  ['count', '80', ''],
  ['duration', '1d 12h', '36 h'],
] as const)('a %s printed %s is echoed as "%s"', (kind, printed, expected) => {
  expect(echo(kind, printed)).toBe(expected)
})

test('limits are shown with the value', () => {
  expect(echo('length', '1.2 ±0.01')).toMatch(/1\.2.* mm, 1\.19.* to 1\.21.* mm/)
  expect(echo('length', 'max 1.21')).toContain('at most 1.21 mm')
})
