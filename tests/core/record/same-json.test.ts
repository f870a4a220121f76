import fc from 'fast-check'
import { expect, test } from 'vitest'
import { sameJson } from '../../../core/record/same-json.ts'

test('the order of keys and keys without a value do not count; the order of a list does', () => {
  expect(sameJson({ a: 1, b: [1, 2] }, { b: [1, 2], a: 1, c: undefined })).toBe(true)
  expect(sameJson([1, 2], [2, 1])).toBe(false)
  expect(sameJson({ a: 1 }, [1])).toBe(false)
  expect(sameJson(null, {})).toBe(false)
})

test('a value is the same as what is read from its JSON, and different from one with a key more', () => {
  fc.assert(
    fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (value) => {
      const again: unknown = JSON.parse(JSON.stringify(value))
      expect(sameJson(again, JSON.parse(JSON.stringify(again)))).toBe(true)
      expect(sameJson(again, { ...(again as object), ' one more': 1 })).toBe(false)
    }),
  )
})
