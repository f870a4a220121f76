import { expect, test } from 'vitest'
import { changedSource, typedSource } from '../../../../renderer/pages/sources/typed-source.ts'

const full = {
  key: 'manuel-1931',
  title: 'Manuel',
  author: 'É. Cormelin',
  year: 1931,
  edition: '2nd',
  language: 'fr',
  unitsAsPrinted: 'ligne',
  notes: 'worn',
  columns: ['maker'],
}

test('a source that is opened and saved unchanged is the same, with what a newer version added', () => {
  expect(changedSource(full, full.key, typedSource(full), [full.key])).toEqual({ source: full })
})

test('a field that is emptied is left out, and spaces around a text go', () => {
  const typed = { ...typedSource(full), author: ' ', year: '', edition: ' 3rd ' }
  const { author: _, year: __, ...rest } = full
  expect(changedSource(full, full.key, typed, [])).toEqual({ source: { ...rest, edition: '3rd' } })
})

test('without a title, with a year that is none, or with a key that is taken, the field is named', () => {
  const blank = typedSource(null)
  expect(changedSource(null, '', blank, [])).toMatchObject({ field: 'title' })
  expect(changedSource(null, 'a', { ...blank, title: 'A', year: '31' }, [])).toMatchObject({ field: 'year' })
  expect(changedSource(null, '', { ...blank, title: 'A' }, [])).toMatchObject({ field: 'key' })
  expect(changedSource(null, 'a', { ...blank, title: 'A' }, ['a'])).toMatchObject({ field: 'key' })
  expect(changedSource(null, 'a', { ...blank, title: 'A' }, ['b'])).toEqual({ source: { key: 'a', title: 'A' } })
})
