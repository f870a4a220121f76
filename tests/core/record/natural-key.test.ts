import fc from 'fast-check'
import { expect, test } from 'vitest'
import { naturalKey } from '../../../core/record/natural-key.ts'

const inOrder = (texts: readonly string[]): string[] =>
  texts.toSorted((one, other) => (naturalKey(one) < naturalKey(other) ? -1 : 1))

test.each([
  [['2b', '10a', '10b', '100']],
  [['A 9', 'A 10', 'B 1']],
  [['17-5', '17-220', '170-5']],
  [['Drawer 2', 'drawer 3', 'DRAWER 12']],
  [['Émery 4', 'emery 5', 'Emery 40']],
  [['9876543210', '12345678901', '123456789012345678901234567890']],
  [['7', '007', '8']],
  [['1.50 × 0.105 × 360', '1.50 × 0.110 × 340', '2.00 × 0.090 × 300']],
])('%j stands in the order of a person who counts', (texts) => {
  expect(inOrder(texts.toReversed())).toEqual(inOrder(texts))
  expect(inOrder(texts.toReversed()).map((text) => Number.parseInt(text.replace(/\D/g, ''), 10))).toEqual(
    texts.map((text) => Number.parseInt(text.replace(/\D/g, ''), 10)),
  )
})

test('whole numbers stand by their size, whatever stands around them', () => {
  fc.assert(
    fc.property(fc.bigInt({ min: 0n, max: 10n ** 40n }), fc.bigInt({ min: 0n, max: 10n ** 40n }), (one, other) => {
      fc.pre(one !== other)
      const [less, more] = one < other ? [one, other] : [other, one]
      expect(naturalKey(`N ${less}x`) < naturalKey(`n ${more}`)).toBe(true)
    }),
  )
})

test('no two texts have the same key', () => {
  fc.assert(
    fc.property(fc.string(), fc.string(), (one, other) => {
      expect(naturalKey(one) === naturalKey(other)).toBe(one === other)
    }),
  )
  expect(naturalKey('A 9')).not.toBe(naturalKey('a  09'))
})
