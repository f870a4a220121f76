import { expect, test } from 'vitest'
import { columnFromHeading, isHeadingRow, usualColumns } from '../../../core/exchange/table-column.ts'
import { caliberFields } from '../../../core/fields/caliber-fields.ts'
import { languages } from '../../../core/fields/field.ts'

const keys = Object.keys(caliberFields) as (keyof typeof caliberFields)[]

test.each(languages)('every field is recognised by its trade term in %s', (language) => {
  for (const key of keys) expect(columnFromHeading(caliberFields[key].names[language][0]).field, key).toBe(key)
})

// Forms of headings: common practice.
test.each([
  ['Diamètre (lignes)', 'diameterMm', 'ligne'],
  ['Diamètre en lignes', 'diameterMm', 'ligne'],
  ['DIAMETRE [Lignes]', 'diameterMm', 'ligne'],
  ["Diameter '''", 'diameterMm', 'ligne'],
  ['Durchmesser in Linien', 'diameterMm', 'ligne'],
  ['Hauteur (mm)', 'heightMm', 'mm'],
  ['Höhe, mm', 'heightMm', 'mm'],
  ['Hoogte mm', 'heightMm', 'mm'],
  ['Force du ressort (1/100)', 'springThicknessMm', 'hundredths-mm'],
  ['Force in 1/100 mm', 'springThicknessMm', 'hundredths-mm'],
  ['Épaisseur du ressort, 1/100', 'springThicknessMm', 'hundredths-mm'],
  ['Fréquence (Hz)', 'beatRateVph', 'hertz'],
  ['Alternances (A/h)', 'beatRateVph', 'vph'],
  ['Roue de centre', 'centreWheel', null],
  ['cal.', 'designation', null],
] as const)('%s is %s in %s', (heading, field, unit) => {
  expect(columnFromHeading(heading)).toEqual({ heading, field, unit })
})

test.each(['Rayon', 'Diamètre (coudées)', 'Roue de centre (mm)', '', '()', 'in', "'''"])(
  '%j names no field',
  (heading) => {
    expect(columnFromHeading(heading).field).toBeNull()
  },
)

test('a first row is headings where it names the designation or two fields', () => {
  expect(isHeadingRow(['Calibre', 'Rayon'])).toBe(true)
  expect(isHeadingRow(['Diamètre', 'Hauteur'])).toBe(true)
  expect(isHeadingRow(['Diamètre', '17'])).toBe(false)
  expect(isHeadingRow(['17-220', '17', '18 000'])).toBe(false)
  expect(isHeadingRow([])).toBe(false)
})

test('the usual columns begin with the designation, and none stands twice', () => {
  expect(usualColumns[0]).toBe('designation')
  expect(new Set(usualColumns).size).toBe(usualColumns.length)
})
