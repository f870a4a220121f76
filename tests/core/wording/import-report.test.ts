import { expect, test } from 'vitest'
import { wordImport } from '../../../core/wording/import-report.ts'

const counts = { added: 1, updated: 2, unchanged: 0, refused: [{ path: 'row 5', reason: 'No.' }], kept: ['springs'] }

test('each fact of an import is a line, with the reasons under what was left out', () => {
  expect(wordImport(counts, false)).toEqual([
    '1 caliber added.',
    '2 calibers updated.',
    '1 caliber left out whole, for these reasons:',
    '  row 5: No.',
    'Kept for export, though this version has no page for it: springs.',
  ])
})

test('a dry run says what would be done', () => {
  expect(wordImport(counts, true)[0]).toBe('1 caliber would be added.')
})

test('an empty file is said to be so', () => {
  expect(wordImport({ added: 0, updated: 0, unchanged: 0, refused: [], kept: [] }, false)).toEqual([
    'The file holds no calibers.',
  ])
})
