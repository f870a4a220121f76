import fc from 'fast-check'
import { expect, test } from 'vitest'
import { isOneEdit } from '../../../core/record/one-edit.ts'

test.each([
  ['17220', '1720', true],
  ['17220', '17221', true],
  ['17220', '17202', true],
  ['verrin', 'verin', true],
  ['17220', '17220', false],
  ['17220', '12720x', false],
  ['17220', '17431', false],
  ['ab', 'ba', true],
  ['', 'a', true],
])('%s and %s', (one, other, near) => {
  expect(isOneEdit(one, other)).toBe(near)
  expect(isOneEdit(other, one)).toBe(near)
})

test('a character left out anywhere is one edit', () => {
  fc.assert(
    fc.property(fc.stringMatching(/^[a-z0-9]{1,12}$/), fc.nat(), (text, at) => {
      const place = at % text.length
      expect(isOneEdit(text, text.slice(0, place) + text.slice(place + 1))).toBe(true)
    }),
  )
})
