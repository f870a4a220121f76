import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type CaliberFieldKey, caliberFields } from '../../../core/fields/caliber-fields.ts'
import { readField } from '../../../core/record/read-field.ts'
import { bareUnit, withSourceUnit } from '../../../core/record/with-source-unit.ts'

const keys = Object.keys(caliberFields) as CaliberFieldKey[]

test('under a source in lignes a bare movement size is in lignes, and its unit is written', () => {
  // 17 lignes are 38.35 mm: law of 19 frimaire year VIII, as quoted in GNU units 2.22, definitions.units
  const kept = withSourceUnit('diameterMm', '17', 'ligne')
  expect(kept).toBe("17'''")
  const read = readField('diameterMm', kept)
  expect(read.ok && read.value).toBeCloseTo(38.35, 2)
})

test.each([
  ['8 3/4', "8 3/4'''"],
  ['8¾', "8¾'''"],
  ['17,5', "17,5'''"],
  ['17-18', "17-18'''"],
  ['max 17', "max 17'''"],
  [' 17 ', "17'''"],
])('%s is taken as figures alone', (typed, kept) => expect(withSourceUnit('diameterMm', typed, 'ligne')).toBe(kept))

test.each(['17 mm', "17'''", '17 dz', '0.75"', '38.35mm', '18/100', '6/0', '16s', 'size 16', '', 'x', '17 lignes'])(
  '%s says its own unit or is no figure, and stays as typed',
  (typed) => expect(withSourceUnit('diameterMm', typed, 'ligne')).toBe(typed),
)

test('inches, and heights in douzièmes where the source says so', () => {
  expect(withSourceUnit('diameterMm', '1.5', 'inch')).toBe('1.5"')
  expect(withSourceUnit('heightMm', '22', 'douzieme')).toBe('22 dz')
  expect(withSourceUnit('diameterMm', '17', 'douzieme')).toBe("17'''")
  expect(withSourceUnit('heightMm', '4.7', 'ligne')).toBe('4.7')
})

test('springs and small sizes stay in millimetres in every book', () => {
  const following = keys.filter((key) => bareUnit(key, 'douzieme') !== 'mm')
  expect(following).toEqual(['diameterMm', 'lengthMm', 'widthMm', 'heightMm'])
  expect(withSourceUnit('springHeightMm', '2', 'ligne')).toBe('2')
})

test('a source without a unit, or with words that name none, changes nothing', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...keys),
      fc.string(),
      fc.constantFrom(undefined, '', 'mm', 'mm and inch'),
      (key, typed, units) => {
        expect(withSourceUnit(key, typed, units)).toBe(typed)
      },
    ),
  )
})

test('what is kept is never less readable than what was typed, and is kept as it is a second time', () => {
  const print = fc.oneof(fc.string(), fc.stringMatching(/^[\d/ .,±-]{1,8}$/))
  fc.assert(
    fc.property(print, fc.constantFrom('ligne', 'inch', 'douzieme'), (typed, units) => {
      const kept = withSourceUnit('diameterMm', typed, units)
      expect(withSourceUnit('diameterMm', kept, units)).toBe(kept)
      const [before, after] = [readField('diameterMm', typed), readField('diameterMm', kept)]
      if (kept === typed) return
      expect(after.ok || (!after.ok && after.problem.code === 'impossible') || before.ok === after.ok).toBe(true)
    }),
    { numRuns: 500 },
  )
})
