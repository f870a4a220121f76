import { expect, test } from 'vitest'
import { caliberFields } from '../../../core/fields/caliber-fields.ts'
import { listFields } from '../../../core/fields/list-fields.ts'
import { glossary } from '../../../core/record/glossary.ts'

test('the glossary explains every field and every list once', () => {
  const keys = [...Object.keys(caliberFields), ...Object.keys(listFields)]
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
