import { expect, test } from 'vitest'
import { caliberFields } from '../../../core/fields/caliber-fields.ts'
import { type CountKey, countKeys, cuttable, cuttableSource, isCountKey } from '../../../core/trains/cuttable-counts.ts'

test('every count of going train and motion work has a range, within what is possible at all', () => {
  for (const key of countKeys) {
    const [low, high] = cuttable(key) ?? [0, 0]
    const { kind, possible, usual, group } = caliberFields[key]
    expect(kind, key).toBe('count')
    expect(['train', 'motion']).toContain(group)
    expect(low, key).toBeLessThan(high)
    expect(low, key).toBeGreaterThanOrEqual(possible[0])
    expect(high, key).toBeLessThanOrEqual(possible[1])
    // What is usual is cut.
    expect(low, key).toBeLessThanOrEqual(usual[0])
    expect(high, key).toBeGreaterThanOrEqual(usual[1])
    expect(cuttableSource(key)).toMatch(/\([AB]\)/)
  }
  const counts = Object.entries(caliberFields).filter(
    ([, { kind, group }]) => kind === 'count' && (group === 'train' || group === 'motion'),
  )
  expect(counts.map(([key]) => key)).toEqual(expect.arrayContaining([...countKeys]))
  expect(counts).toHaveLength(countKeys.length)
})

test('a field that is no count of teeth or leaves has none', () => {
  expect(cuttable('beatRateVph')).toBeNull()
  expect(cuttable('jewelsStated')).toBeNull()
  expect(isCountKey('jewelsStated')).toBe(false)
  expect(isCountKey('toString')).toBe(false)
})

const printed: readonly [CountKey, readonly number[], string][] = [
  ['thirdPinion', [5, 6, 8, 16], 'Derham 1696; Goodrich 1905, p. 257; A'],
  ['fourthWheel', [30, 33, 42, 80, 112], 'Derham 1696, pp. 26 and 116; A, and constructed, D'],
  ['centreWheel', [48, 120, 128, 160], 'Goodrich 1905, pp. 257–258; Encyclopaedia Britannica 1810, “Clock”; A'],
  ['barrelTeeth', [48, 96, 144], 'Derham 1696; Goodrich 1905, p. 492; A'],
  [
    'escapeTeeth',
    [3, 13, 15, 16, 20, 30, 40, 84, 90],
    'Goodrich pp. 257–258; Britannica 1810; A. Dietzschold p. 205; B',
  ],
  ['cannonPinion', [10, 12, 14, 30, 48], 'Britannica 1810; Beckett 1903, p. 297; Derham pp. 110–111; A'],
  ['hourWheel', [36, 40, 48, 72, 84], 'Goodrich 1905, pp. 293–295; A'],
]
test.each(printed)('counts in print are within the range of %s', (key, counts, _source) => {
  const [low, high] = cuttable(key) ?? [0, 0]
  for (const count of counts) expect(count >= low && count <= high, `${key} ${count}`).toBe(true)
})
