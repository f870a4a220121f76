import { expect, test } from 'vitest'
import { caliberFields } from '../../../core/fields/caliber-fields.ts'
import { listFields } from '../../../core/fields/list-fields.ts'
import { partNames } from '../../../core/fields/part-names.ts'
import { findTerms } from '../../../core/record/find-terms.ts'
import { glossary } from '../../../core/record/glossary.ts'

test('the glossary explains every field, every list and every part once', () => {
  const keys = [...Object.keys(caliberFields), ...Object.keys(listFields), ...Object.keys(partNames)]
  expect(
    glossary()
      .map((term) => term.key)
      .toSorted(),
  ).toEqual(keys.toSorted())
})

test('the glossary runs in alphabetical order', () => {
  const labels = glossary().map((term) => term.label)
  expect(labels).toEqual(labels.toSorted())
})

test('a part says where its name was found in print, and a word says what misleads in its names', () => {
  const of = (key: string) => glossary().find((term) => term.key === key)
  expect(of('ratchetWheel')).toMatchObject({
    kind: 'part',
    found: { de: [expect.stringContaining('Gutenberg')], nl: [expect.stringContaining('1906')] },
  })
  expect(of('barrelTeeth')).toMatchObject({ kind: 'field', found: {}, traps: [] })
  expect(of('centreWheel')?.traps).toHaveLength(2)
})

test('a field that is chosen says what its choices are called in print, and is found by that', () => {
  const end = glossary().find(({ key }) => key === 'springEnd')
  expect(end?.choices.find(({ label }) => label === 'slipping bridle')?.names.de).toContain('Gleitzaum')
  expect(findTerms(glossary(), 'bride glissante').map(({ key }) => key)).toContain('springEnd')
})
